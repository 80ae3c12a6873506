package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Days as they are typed: 2026-12-01, 1 December 2026 or 1 Dec 2026. Figures with strokes are not
 * read, for 03/04 is one day on one side of the ocean and another on the other.
 */
final class DayWords {
  private static final List<DateTimeFormatter> READ =
      List.of(DateTimeFormatter.ISO_LOCAL_DATE, pattern("d MMMM uuuu"), pattern("d MMM uuuu"));

  private DayWords() {}

  private static DateTimeFormatter pattern(String pattern) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .toFormatter(Locale.UK)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** The day that the text names; empty when it names none. */
  static Optional<LocalDate> read(String text) {
    String s = text.strip();
    for (DateTimeFormatter f : READ) {
      try {
        return Optional.of(LocalDate.parse(s, f));
      } catch (DateTimeParseException e) {
        // Perhaps the next way of writing it.
      }
    }
    return Optional.empty();
  }
}
