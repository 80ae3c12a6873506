package saddlewright.casefile.order;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;
import java.util.Optional;

/**
 * What is planned and known of one stage.
 *
 * @param leftOut whether the stage is left out of this treatment
 * @param days days that it takes until the next stage can begin
 * @param due a day set by hand, in place of the one counted back from the fitting
 * @param time time of day by which it is wanted
 * @param done the day on which it was done
 * @param by who did it; may be empty
 */
public record PlannedStage(
    boolean leftOut,
    Optional<Integer> days,
    Optional<LocalDate> due,
    Optional<LocalTime> time,
    Optional<LocalDate> done,
    String by) {
  public static final PlannedStage OPEN =
      new PlannedStage(
          false, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");

  public PlannedStage {
    Objects.requireNonNull(due);
    Objects.requireNonNull(time);
    Objects.requireNonNull(done);
    Objects.requireNonNull(by);
    if (days.filter(d -> d < 0 || d > 1000).isPresent()) {
      throw new IllegalArgumentException("a stage takes from 0 to 1,000 days");
    }
  }

  public PlannedStage withLeftOut(boolean on) {
    return new PlannedStage(on, days, due, time, done, by);
  }

  public PlannedStage withDays(Optional<Integer> count) {
    return new PlannedStage(leftOut, count, due, time, done, by);
  }

  public PlannedStage withDue(Optional<LocalDate> day) {
    return new PlannedStage(leftOut, days, day, time, done, by);
  }

  public PlannedStage withTime(Optional<LocalTime> at) {
    return new PlannedStage(leftOut, days, due, at, done, by);
  }

  public PlannedStage withDone(Optional<LocalDate> day, String who) {
    return new PlannedStage(leftOut, days, due, time, day, who);
  }
}
