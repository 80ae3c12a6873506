package saddlewright.prescription.pdf.print;

/**
 * The size of a sheet of paper as it is held, in millimetres.
 *
 * @param width from left to right
 * @param height from top to bottom
 */
public record PageSize(double width, double height) {
  /** Within so much, in mm, two papers are one: sizes are rounded by whoever names them. */
  private static final double SAME = 1;

  public PageSize {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a page of " + width + " mm by " + height + " mm");
    }
  }

  /** Whether this is the other paper, held either way. */
  public boolean isSamePaperAs(PageSize other) {
    return isNear(width, other.width) && isNear(height, other.height)
        || isNear(width, other.height) && isNear(height, other.width);
  }

  private static boolean isNear(double a, double b) {
    return Math.abs(a - b) <= SAME;
  }
}
