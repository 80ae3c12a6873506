package saddlewright.prescription;

import saddlewright.rules.Source;

/**
 * A condition on a stage that is not met, or something to know before it.
 *
 * @param closed whether the stage should wait; otherwise it is only to be known
 * @param gap what is wanting, a sentence
 * @param remedy what to do, a sentence; may be empty
 * @param source who says so
 */
public record Gate(boolean closed, String gap, String remedy, Source source) {
  static Gate closed(String gap, String remedy, Source source) {
    return new Gate(true, gap, remedy, source);
  }

  static Gate note(String sentence, Source source) {
    return new Gate(false, sentence, "", source);
  }

  /** Both sentences. */
  public String words() {
    return remedy.isEmpty() ? gap : gap + " " + remedy;
  }
}
