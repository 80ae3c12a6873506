package saddlewright.drawing;

/**
 * How wide words are in the type face of the sheet.
 *
 * <p>Advance widths of Liberation Sans, which are those of Helvetica (Adobe core font metrics), in
 * thousandths of the size of the type.
 */
final class Lettering {
  private static final char FIRST = ' ';

  private static final int[] ADVANCES = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  /** What a letter beyond the table is taken to need. */
  private static final int OTHER = 620;

  /** Bold letters are a little wider, on the mean (from memory). */
  private static final double BOLD = 1.07;

  private Lettering() {}

  /** Width of words in mm; a few hundredths off where they are bold or not English. */
  static double width(String words, double size, boolean bold) {
    int sum = 0;
    for (int i = 0; i < words.length(); i++) {
      int at = words.charAt(i) - FIRST;
      sum += at >= 0 && at < ADVANCES.length ? ADVANCES[at] : OTHER;
    }
    return sum * size / 1000 * (bold ? BOLD : 1);
  }
}
