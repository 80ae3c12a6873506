package saddlewright.desktop.survey;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import saddlewright.desktop.Words;

/** A number as people write it, with or without its unit. */
final class NumberText {
  private static final Pattern WRITTEN =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+))\\s*([^\\d.]*)");
  private static final Pattern WHOLE = Pattern.compile("\\d{2,3}");

  private static final double MM_IN_CM = 10;
  private static final double MM_IN_INCH = 25.4;

  /**
   * A number that was understood.
   *
   * @param value in the unit of the item
   * @param remark how it was understood, where that is not plain
   */
  record Read(double value, Optional<String> remark) {}

  private NumberText() {}

  /**
   * The number, if the text is one.
   *
   * @param hundredths whether two or three figures without a point are hundredths of a millimetre,
   *     as the gauges for undercuts are spoken of
   */
  static Optional<Read> read(String text, Unit unit, boolean hundredths) {
    String plain = text.strip().replace(',', '.').replace('\u2212', '-').toLowerCase(Locale.ROOT);
    Matcher m = WRITTEN.matcher(plain);
    if (!m.matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(m.group(1));
    String written = m.group(2).strip();
    if (written.isEmpty()) {
      if (hundredths && WHOLE.matcher(plain).matches()) {
        double read = rounded(value / 100);
        return Optional.of(
            new Read(
                read, Optional.of(Words.of("survey.read-as", plain, unit.amount(show(read))))));
      }
      return Optional.of(new Read(value, Optional.empty()));
    }
    if (written.equals(unit.sign()) || isLongName(written, unit)) {
      return Optional.of(new Read(value, Optional.empty()));
    }
    if (unit == Unit.MILLIMETRES && written.equals("cm")) {
      return converted(text, value * MM_IN_CM, unit);
    }
    if (unit == Unit.MILLIMETRES && (written.equals("in") || written.equals("inch"))) {
      return converted(text, value * MM_IN_INCH, unit);
    }
    return Optional.empty();
  }

  private static Optional<Read> converted(String text, double mm, Unit unit) {
    double read = rounded(mm);
    return Optional.of(
        new Read(
            read, Optional.of(Words.of("survey.read-as", text.strip(), unit.amount(show(read))))));
  }

  private static boolean isLongName(String written, Unit unit) {
    return switch (unit) {
      case MILLIMETRES -> false;
      case DEGREES -> written.equals("deg") || written.equals("degrees");
      case PER_CENT -> written.equals("per cent") || written.equals("percent");
      case TO_ONE -> written.equals(":");
    };
  }

  static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).doubleValue();
  }

  /** The number with all its digits, to four decimals: what is edited must not be rounded. */
  static String show(double value) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }

  /** The number to be read and not edited, with a proper minus. */
  static String read(double value) {
    return show(value).replace('-', '\u2212');
  }
}
