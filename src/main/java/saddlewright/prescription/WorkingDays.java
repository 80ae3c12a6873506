package saddlewright.prescription;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * How days are counted: every day, or Monday to Friday. Public holidays are not known.
 *
 * @param everyDay whether Saturdays and Sundays count
 */
record WorkingDays(boolean everyDay) {

  /** The day that lies so many days before, or after where the count is negative. */
  LocalDate before(LocalDate day, int count) {
    if (everyDay) {
      return day.minusDays(count);
    }
    LocalDate out = day;
    int step = count < 0 ? 1 : -1;
    for (int left = Math.abs(count); left > 0; ) {
      out = out.plusDays(step);
      if (counts(out)) {
        left--;
      }
    }
    return out;
  }

  boolean counts(LocalDate day) {
    return everyDay
        || (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY);
  }
}
