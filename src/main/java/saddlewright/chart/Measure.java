package saddlewright.chart;

/** A check that a charted number is possible at all; whether it is likely is said elsewhere. */
final class Measure {
  private Measure() {}

  static void refuseOutside(String what, double value, double min, double max) {
    if (!(value >= min && value <= max)) {
      throw new IllegalArgumentException(
          what + " is " + value + "; it must be a number from " + show(min) + " to " + show(max));
    }
  }

  private static String show(double v) {
    return v == Math.rint(v) ? Long.toString((long) v) : Double.toString(v);
  }
}
