package saddlewright.rules;

import java.util.Locale;

/**
 * The values that a school may set for a quantity without being taken for a slip of the pen.
 *
 * <p>No work gives such ranges. They are derived from the British limit: from a quarter of it to
 * four times as much, and never beyond what the unit allows. This is wide enough for every
 * difference between schools that is known and narrow enough to catch a misplaced decimal point or
 * an inch.
 *
 * @param least smallest plausible value
 * @param most largest plausible value
 * @param unit as the quantity has it
 */
public record LimitRange(double least, double most, String unit) {
  private static final double LATITUDE = 4;
  private static final double UNBOUNDED = 60;

  public static LimitRange of(Quantity quantity) {
    double usual = Profile.UK_TEACHING.limit(quantity);
    double cap = cap(quantity.unit());
    double most = usual == 0 ? cap : Math.min(cap, usual * LATITUDE);
    return new LimitRange(rounded(usual / LATITUDE), rounded(most), quantity.unit());
  }

  /** What no value of the unit exceeds. */
  private static double cap(String unit) {
    return switch (unit) {
      case "%" -> 100;
      case "degrees" -> 360;
      case "grade" -> 3;
      default -> UNBOUNDED;
    };
  }

  private static double rounded(double value) {
    return Math.round(value * 1000) / 1000.0;
  }

  public boolean holds(double value) {
    return value >= least && value <= most;
  }

  /** Such as "2 to 32 mm". */
  public String words() {
    return number(least) + " to " + withUnit(most, unit);
  }

  /** A limit as it is written, such as "8 mm" or "3". */
  static String withUnit(double value, String unit) {
    return (number(value) + (unit.equals("%") ? "" : " ") + unit).strip();
  }

  private static String number(double value) {
    String s = String.format(Locale.ROOT, "%.3f", value);
    return s.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
