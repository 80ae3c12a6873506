package saddlewright.desktop.preview;

import java.util.List;
import saddlewright.desktop.Words;
import saddlewright.prescription.pdf.print.PageSize;

/**
 * How large a page is shown: fitted to the window, or a share of its true size.
 *
 * @param fit what is fitted
 * @param share of the true size, where nothing is fitted
 */
record Zoom(Fit fit, double share) {
  /** What is fitted into the window. */
  enum Fit {
    WIDTH,
    PAGE,
    NOTHING
  }

  static final Zoom WIDTH = new Zoom(Fit.WIDTH, 1);
  static final Zoom PAGE = new Zoom(Fit.PAGE, 1);
  static final Zoom TRUE = of(1);

  private static final double LEAST = 0.2;
  private static final double MOST = 4;

  /** What can be chosen by name. */
  static final List<Zoom> CHOICES =
      List.of(WIDTH, PAGE, of(0.5), of(0.75), TRUE, of(1.25), of(1.5), of(2), of(3), of(MOST));

  static Zoom of(double share) {
    return new Zoom(Fit.NOTHING, Math.max(LEAST, Math.min(MOST, share)));
  }

  /**
   * Pixels a millimetre at which a page is shown.
   *
   * @param width room for it, in pixels
   * @param height the same
   * @param trueScale pixels a millimetre that show it as large as it is
   */
  double scale(PageSize page, double width, double height, double trueScale) {
    double across = width / page.width();
    return switch (fit) {
      case WIDTH -> bounded(across, trueScale);
      case PAGE -> bounded(Math.min(across, height / page.height()), trueScale);
      case NOTHING -> share * trueScale;
    };
  }

  private static double bounded(double scale, double trueScale) {
    return Math.max(LEAST * trueScale, Math.min(MOST * trueScale, scale));
  }

  String words() {
    return switch (fit) {
      case WIDTH -> Words.of("pages.fit-width");
      case PAGE -> Words.of("pages.fit-page");
      case NOTHING ->
          equals(TRUE)
              ? Words.of("pages.true-size")
              : Words.of("pages.percent", Math.round(share * 100));
    };
  }
}
