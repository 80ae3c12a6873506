package saddlewright.desktop.safekeeping;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import saddlewright.desktop.Words;

/** A moment of the past in words, as short as it can be told without doubt. */
public final class Moment {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

  private Moment() {}

  /** Such as "today at 14:03". */
  public static String inWords(Instant at) {
    return inWords(at, ZonedDateTime.now());
  }

  static String inWords(Instant at, ZonedDateTime now) {
    ZonedDateTime there = at.atZone(now.getZone());
    LocalDate day = there.toLocalDate();
    if (day.equals(now.toLocalDate())) {
      return Words.of("safe.today", CLOCK.format(there));
    }
    if (day.equals(now.toLocalDate().minusDays(1))) {
      return Words.of("safe.yesterday", CLOCK.format(there));
    }
    return Words.of("safe.on-day", DAY.format(there), CLOCK.format(there));
  }

  /** The time of day alone, such as 14:03. */
  public static String clock(Instant at) {
    return clock(at, ZoneId.systemDefault());
  }

  static String clock(Instant at, ZoneId zone) {
    return CLOCK.format(at.atZone(zone));
  }
}
