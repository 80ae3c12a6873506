package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The plan of a treatment.
 *
 * @param requested the stage that the laboratory is asked for now
 * @param fitting the day on which the denture is to be fitted, from which the others are counted
 *     back
 * @param everyDay whether Saturdays and Sundays count as working days
 * @param stages what is planned and known of each; those that are absent are open
 */
public record StagePlan(
    Optional<TreatmentStage> requested,
    Optional<LocalDate> fitting,
    boolean everyDay,
    Map<TreatmentStage, PlannedStage> stages) {
  public static final StagePlan EMPTY =
      new StagePlan(Optional.empty(), Optional.empty(), false, Map.of());

  public StagePlan {
    Objects.requireNonNull(requested);
    Objects.requireNonNull(fitting);
    Map<TreatmentStage, PlannedStage> kept = new EnumMap<>(TreatmentStage.class);
    kept.putAll(stages);
    kept.values().removeIf(PlannedStage.OPEN::equals);
    stages = java.util.Collections.unmodifiableMap(kept);
  }

  public PlannedStage at(TreatmentStage stage) {
    return stages.getOrDefault(stage, PlannedStage.OPEN);
  }

  public StagePlan with(TreatmentStage stage, PlannedStage planned) {
    Map<TreatmentStage, PlannedStage> next = new EnumMap<>(TreatmentStage.class);
    next.putAll(stages);
    next.put(stage, planned);
    return new StagePlan(requested, fitting, everyDay, next);
  }

  public StagePlan withRequested(Optional<TreatmentStage> stage) {
    return new StagePlan(stage, fitting, everyDay, stages);
  }

  public StagePlan withFitting(Optional<LocalDate> day) {
    return new StagePlan(requested, day, everyDay, stages);
  }

  public StagePlan withEveryDay(boolean on) {
    return new StagePlan(requested, fitting, on, stages);
  }
}
