package saddlewright.prescription.pdf;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;

/** Dates as a letter writes them. */
final class Dates {
  private static final DateTimeFormatter LETTER =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

  private Dates() {}

  /** Such as 2 November 2026. */
  static String words(LocalDate date) {
    return LETTER.format(date);
  }

  /** The same of an ISO date; any other text as it is. */
  static String words(String text) {
    try {
      return words(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return text;
    }
  }
}
