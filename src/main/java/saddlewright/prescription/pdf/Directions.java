package saddlewright.prescription.pdf;

import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;

/** Which way words run (Unicode Standard Annex 9, by the Java library). */
final class Directions {
  private static final String PAIRS = "()[]{}<>«»‹›≤≥";
  private static final String RIGHT_TO_LEFT = "\u200f";
  private static final String LEFT_TO_RIGHT = "\u200e";
  private static final Map<Integer, Integer> MIRRORED = new HashMap<>();

  static {
    for (int i = 0; i < PAIRS.length(); i += 2) {
      MIRRORED.put((int) PAIRS.charAt(i), (int) PAIRS.charAt(i + 1));
      MIRRORED.put((int) PAIRS.charAt(i + 1), (int) PAIRS.charAt(i));
    }
  }

  private Directions() {}

  /** Whether a character is unseen and says only how its neighbours join or run. */
  static boolean isSign(int c) {
    return c >= 0x200C && c <= 0x200F
        || c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069
        || c == 0x061C;
  }

  /** Whether any of the words may run from right to left. */
  static boolean turns(String text) {
    char[] chars = text.toCharArray();
    return Bidi.requiresBidi(chars, 0, chars.length);
  }

  /**
   * An unseen sign that gives a line of a paragraph the direction of the whole; empty where none is
   * needed.
   */
  static String ofParagraph(String text) {
    if (!turns(text)) {
      return "";
    }
    boolean ltr = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
    return ltr ? LEFT_TO_RIGHT : RIGHT_TO_LEFT;
  }

  /** A line as it stands on paper, from left to right, without the unseen signs. */
  static String asSeen(String line) {
    Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int n = bidi.getRunCount();
    byte[] levels = new byte[n];
    Integer[] runs = new Integer[n];
    for (int i = 0; i < n; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      runs[i] = i;
    }
    Bidi.reorderVisually(levels, 0, runs, 0, n);
    StringBuilder out = new StringBuilder(line.length());
    for (int run : runs) {
      String words = line.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
      out.append(levels[run] % 2 == 0 ? words : turned(words));
    }
    return withoutSigns(out.toString());
  }

  static String withoutSigns(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().filter(c -> !isSign(c)).forEach(out::appendCodePoint);
    return out.toString();
  }

  /** Letters in reverse, each with the marks on it; brackets mirrored. */
  private static String turned(String words) {
    StringBuilder out = new StringBuilder(words.length());
    int end = words.length();
    while (end > 0) {
      int start = end;
      int c;
      do {
        c = words.codePointBefore(start);
        start -= Character.charCount(c);
      } while (start > 0 && isMark(c));
      String letter = words.substring(start, end);
      Integer mirrored = MIRRORED.get(c);
      out.append(mirrored == null ? letter : Character.toString(mirrored));
      end = start;
    }
    return out.toString();
  }

  /** Whether a character sits on the one before it. */
  static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }
}
