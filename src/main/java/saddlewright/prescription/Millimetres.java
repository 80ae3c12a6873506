package saddlewright.prescription;

import java.util.Locale;

/** Lengths in words. */
final class Millimetres {
  private Millimetres() {}

  /** To a tenth, such as "18.4 mm": finer than a hand can work. */
  static String of(double mm) {
    return String.format(Locale.ROOT, "%.1f mm", mm + 0.0);
  }

  /** To a hundredth, such as "0.25 mm", as undercuts and relief are given. */
  static String fine(double mm) {
    return String.format(Locale.ROOT, "%.2f mm", mm + 0.0);
  }
}
