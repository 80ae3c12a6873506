package saddlewright.layout;

/** Smoothing of a quantity known at equal steps. */
final class Fairing {
  private Fairing() {}

  /**
   * A smooth curve that is nowhere below the given one: the running maximum over a window, then the
   * running mean over the same window. Each mean is over maxima that all saw the value in its middle.
   *
   * @param half half the window, in steps
   */
  static double[] above(double[] values, int half) {
    return mean(maximum(values, half), half);
  }

  /** A smooth curve that is nowhere above the given one. */
  static double[] below(double[] values, int half) {
    return negated(above(negated(values), half));
  }

  static double[] mean(double[] values, int half) {
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      double sum = 0;
      for (int k = i - half; k <= i + half; k++) {
        sum += values[clamped(k, values.length)];
      }
      out[i] = sum / (2 * half + 1);
    }
    return out;
  }

  private static double[] maximum(double[] values, int half) {
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      double max = Double.NEGATIVE_INFINITY;
      for (int k = i - half; k <= i + half; k++) {
        max = Math.max(max, values[clamped(k, values.length)]);
      }
      out[i] = max;
    }
    return out;
  }

  private static double[] negated(double[] values) {
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      out[i] = -values[i];
    }
    return out;
  }

  private static int clamped(int i, int n) {
    return Math.max(0, Math.min(n - 1, i));
  }

  /** The smooth step from 0 (at or below 0) to 1 (at or above 1), level at both ends. */
  static double step(double u) {
    double v = Math.max(0, Math.min(1, u));
    return v * v * (3 - 2 * v);
  }
}
