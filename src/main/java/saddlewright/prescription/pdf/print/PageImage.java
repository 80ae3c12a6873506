package saddlewright.prescription.pdf.print;

/**
 * The picture of a page, or of a page made small.
 *
 * @param width pixels in a row
 * @param height rows
 * @param argb the pixels by rows from the top, opaque, as 0xAARRGGBB; not to be changed
 */
public record PageImage(int width, int height, int[] argb) {
  /** Lightest share of 255 that is seen on paper at all. */
  private static final int PAPER = 250;

  public PageImage {
    if (argb.length != width * height) {
      throw new IllegalArgumentException(
          argb.length + " pixels are not " + width + " by " + height);
    }
  }

  /** Whether a printer would put anything there: paper is white, and all else leaves a trace. */
  boolean isInked(int x, int y) {
    int p = argb[y * width + x];
    return (p >> 16 & 255) < PAPER || (p >> 8 & 255) < PAPER || (p & 255) < PAPER;
  }
}
