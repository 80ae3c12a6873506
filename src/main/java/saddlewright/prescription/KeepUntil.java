package saddlewright.prescription;

import java.time.LocalDate;
import java.util.Locale;
import saddlewright.casefile.order.Regime;

/**
 * How long a prescription is kept: the years that were read of for a body of rules, which local law
 * may lengthen.
 *
 * <p>Florida asks for four years, West Virginia and Texas for two, Oklahoma for three: the longest
 * is taken for the United States. In the United Kingdom at least five, often eleven; in the
 * European Union ten after the statement of the manufacturer (the sources stand in the table of the
 * form's fields). A teaching clinic keeps to the British figure.
 */
public record KeepUntil(int years, String note) {

  public static KeepUntil of(Regime regime) {
    return switch (regime) {
      case UK -> new KeepUntil(5, "often eleven years are kept");
      case EU -> new KeepUntil(10, "ten years for the manufacturer's statement");
      case US -> new KeepUntil(4, "states ask for two, three or four years; the longest is taken");
      case TEACHING -> new KeepUntil(5, "often eleven years are kept");
    };
  }

  /** Such as "at least until 2 November 2031 (5 years; …); local law decides". */
  public String words(LocalDate from) {
    LocalDate until = from.plusYears(years);
    return String.format(
        Locale.ROOT,
        "at least until %s (%d years; %s); local law decides",
        java.time.format.DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK).format(until),
        years,
        note);
  }
}
