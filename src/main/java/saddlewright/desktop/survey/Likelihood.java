package saddlewright.desktop.survey;

import java.util.Optional;
import saddlewright.dentition.PublishedRange;
import saddlewright.desktop.Words;

/** Says what was published of a value that is out of the usual, and which slip would explain it. */
final class Likelihood {
  private static final double MM_IN_INCH = 25.4;

  private Likelihood() {}

  /** Such as "10.4 mm (8.8 to 13.3)" or "7.4 ± 1.6 mm (2.7 to 12.2)". */
  static String words(PublishedRange r, Unit unit) {
    String ends = Words.of("survey.from-to", NumberText.read(r.least()), NumberText.read(r.most()));
    if (r.mean().isEmpty()) {
      return unit.amount(ends);
    }
    String mean = NumberText.show(r.mean().get());
    String middle =
        r.deviation().map(d -> Words.of("survey.mean-sd", mean, NumberText.show(d))).orElse(mean);
    return Words.of("survey.mean-range", unit.amount(middle), ends);
  }

  /** The same with where it stands, and how far that was checked. */
  static String withSource(PublishedRange r, Unit unit) {
    return Words.of("survey.sourced", words(r, unit), r.evidence(), r.source());
  }

  /**
   * A sentence about a value outside the published range.
   *
   * @param what the item, with a capital
   */
  static Optional<String> caution(String what, double value, Unit unit, PublishedRange r) {
    if (r.holds(value)) {
      return Optional.empty();
    }
    String sentence =
        Words.of("survey.outside", what, unit.amount(NumberText.show(value)), words(r, unit));
    String slip = slip(value, unit, r).orElseGet(() -> Words.of("survey.check"));
    return Optional.of(sentence + " " + slip);
  }

  /** The slip that would turn the value into a likely one. */
  static Optional<String> slip(double value, Unit unit, PublishedRange r) {
    if (value == 0) {
      return Optional.empty();
    }
    if (unit == Unit.MILLIMETRES) {
      if (r.quantity().equals("undercut") && r.holds(value / 100)) {
        return slip("survey.slip-hundredths", value, unit, value / 100);
      }
      if (r.holds(value * MM_IN_INCH) && value < 0.1) {
        return slip("survey.slip-inch", value, unit, value * MM_IN_INCH);
      }
      if (r.holds(value * 10)) {
        return slip("survey.slip-centimetres", value, unit, value * 10);
      }
    }
    if (unit == Unit.PER_CENT && value <= 1 && r.holds(value * 100)) {
      return slip("survey.slip-share", value, unit, value * 100);
    }
    if (r.holds(value / 10)) {
      return slip("survey.slip-point", value, unit, value / 10);
    }
    return Optional.empty();
  }

  private static Optional<String> slip(String key, double value, Unit unit, double meant) {
    return Optional.of(
        Words.of(
            key, NumberText.show(value), unit.amount(NumberText.show(NumberText.rounded(meant)))));
  }
}
