package saddlewright.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A number in words, with its unit, as findings show it. */
public final class Amount {
  private Amount() {}

  /** Such as "2.1 mm"; hundredths only where they matter. */
  public static String mm(double value) {
    double tenths = value * 10;
    boolean hundredths = Math.abs(tenths - Math.rint(tenths)) > 0.2 && value < 1;
    // Findings are written thousands of times; a format string would be parsed each time.
    String s =
        BigDecimal.valueOf(value).setScale(hundredths ? 2 : 1, RoundingMode.HALF_UP).toPlainString()
            + " mm";
    return s.endsWith(".0 mm") ? s.replace(".0 mm", " mm") : s;
  }

  public static String atLeastMm(double value) {
    return "at least " + mm(value);
  }

  /** Such as "1 braced tooth" or "2 braced teeth". */
  public static String teeth(long count, String which) {
    return count + " " + which + (count == 1 ? " tooth" : " teeth");
  }

  /** Such as "180 degrees", to the whole degree. */
  public static String degrees(double value) {
    return Math.round(value) + " degrees";
  }

  public static String atLeastDegrees(double value) {
    return "at least " + degrees(value);
  }

  /** Such as "1 rest" or "2 rests". */
  public static String of(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
