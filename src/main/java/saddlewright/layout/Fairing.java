package saddlewright.layout;

/** Smoothing of a quantity known at equal steps. */
final class Fairing {
  private Fairing() {}

  /**
   * A smooth curve that is nowhere below the given one: its running mean, lifted by as much as the
   * curve stands out of that mean. The lift is the running mean of the running maximum over the
   * same window, so that each mean is over maxima that all saw the value in its middle.
   *
   * @param half half the window, in steps
   */
  static double[] above(double[] values, int half) {
    double[] smooth = mean(mean(values, half), half);
    double[] standing = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      standing[i] = Math.max(0, values[i] - smooth[i]);
    }
    double[] lift = mean(maximum(standing, half), half);
    for (int i = 0; i < values.length; i++) {
      smooth[i] += lift[i];
    }
    return smooth;
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
