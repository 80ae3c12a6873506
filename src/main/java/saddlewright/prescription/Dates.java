package saddlewright.prescription;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as a letter writes them. */
public final class Dates {
  private static final DateTimeFormatter LETTER =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
  private static final DateTimeFormatter WITH_WEEKDAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);
  private static final DateTimeFormatter BRIEF =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.UK);

  private static final Pattern ISO = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  private Dates() {}

  /** Such as 2 November 2026. */
  public static String words(LocalDate date) {
    return LETTER.format(date);
  }

  /** The text with the ISO dates in it as a letter writes them; anything else as it is. */
  public static String words(String text) {
    return ISO.matcher(text.strip()).replaceAll(m -> Matcher.quoteReplacement(dayOr(m.group())));
  }

  /** The day that a text begins with, written as year-month-day. */
  public static Optional<LocalDate> leading(String text) {
    Matcher m = ISO.matcher(text.strip());
    try {
      return m.lookingAt() ? Optional.of(LocalDate.parse(m.group())) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static String dayOr(String text) {
    try {
      return words(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return text;
    }
  }

  /** Such as Monday 2 November 2026. */
  public static String withWeekday(LocalDate date) {
    return WITH_WEEKDAY.format(date);
  }

  /** Such as Mon 2 Nov 2026, for tables. */
  public static String brief(LocalDate date) {
    return BRIEF.format(date);
  }
}
