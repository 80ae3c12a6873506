package saddlewright.rules;

/** Words as a sentence begins with them. */
public final class Sentence {
  private Sentence() {}

  /** The words with a capital first letter; empty when they are. */
  public static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
