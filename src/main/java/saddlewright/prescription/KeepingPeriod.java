package saddlewright.prescription;

import java.time.LocalDate;
import saddlewright.casefile.order.Regime;

/**
 * How long both holders of a prescription keep it.
 *
 * @param years counted from the day of issue
 * @param source after what
 */
public record KeepingPeriod(int years, String source) {

  /** The longest of the periods that were seen for a regime; local rules may ask for longer. */
  public static KeepingPeriod of(Regime regime) {
    return switch (regime) {
      case TEACHING, UK ->
          new KeepingPeriod(11, "UK practice: at least 5 years, often 11 (NHSBSA guidance)");
      case EU ->
          new KeepingPeriod(
              10, "Regulation (EU) 2017/745, Annex XIII: 10 years; 15 for what is implanted");
      case US -> new KeepingPeriod(4, "Florida form: 4 years, the longest of the States seen");
    };
  }

  public LocalDate until(LocalDate issued) {
    return issued.plusYears(years);
  }
}
