package saddlewright.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Notation;

/**
 * The stages of a treatment with their dates and with what stands in their way.
 *
 * @param today the day as of which it is read
 * @param plan what was planned
 * @param rows every stage in order
 * @param unset stages whose days must be given before the earlier ones have a date
 * @param remarks what is out of order, a sentence each
 */
public record Timetable(
    LocalDate today,
    StagePlan plan,
    List<Row> rows,
    List<TreatmentStage> unset,
    List<String> remarks) {

  public Timetable {
    rows = List.copyOf(rows);
    unset = List.copyOf(unset);
    remarks = List.copyOf(remarks);
  }

  /** How far a stage is. */
  public enum State {
    DONE("done"),
    LEFT_OUT("left out"),
    OVERDUE("overdue"),
    CLOSED("waits"),
    NEXT("next"),
    OPEN("open");

    private final String words;

    State(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A stage.
   *
   * @param planned what was planned and noted
   * @param due the day by which it is to be finished, set by hand or counted back
   * @param gates what stands in its way or is to be known before it; none once it is done
   */
  public record Row(
      TreatmentStage stage,
      PlannedStage planned,
      State state,
      Optional<LocalDate> due,
      List<Gate> gates) {
    public Row {
      gates = List.copyOf(gates);
    }

    public boolean isActive() {
      return !planned.leftOut();
    }

    public boolean isDone() {
      return planned.done().isPresent();
    }

    public boolean isClosed() {
      return gates.stream().anyMatch(Gate::closed);
    }
  }

  /**
   * The timetable of a case.
   *
   * @param today the day as of which stages are overdue
   */
  public static Timetable of(Assessment assessment, Notation notation, LocalDate today) {
    return of(assessment, PreparationPlan.of(assessment, notation), today);
  }

  /** The same with the preparations at hand. */
  public static Timetable of(Assessment assessment, PreparationPlan preparations, LocalDate today) {
    StagePlan plan = assessment.subject().prescription().stages();
    Map<TreatmentStage, LocalDate> due = due(plan);
    StageGates gates = new StageGates(assessment, preparations);
    List<Row> rows = new ArrayList<>();
    boolean nextFound = false;
    for (TreatmentStage stage : TreatmentStage.values()) {
      PlannedStage at = plan.at(stage);
      boolean open = !at.leftOut() && at.done().isEmpty();
      List<Gate> before = open ? gates.before(stage) : List.of();
      Optional<LocalDate> day = Optional.ofNullable(due.get(stage));
      State state;
      if (at.done().isPresent()) {
        state = State.DONE;
      } else if (at.leftOut()) {
        state = State.LEFT_OUT;
      } else if (day.filter(today::isAfter).isPresent()) {
        state = State.OVERDUE;
      } else if (before.stream().anyMatch(Gate::closed)) {
        state = State.CLOSED;
      } else {
        state = nextFound ? State.OPEN : State.NEXT;
      }
      nextFound |= open;
      rows.add(new Row(stage, at, state, day, before));
    }
    List<String> remarks = new ArrayList<>(plainRemarks(plan, today));
    remarks.addAll(gates.breaches());
    return new Timetable(today, plan, rows, unset(plan), remarks);
  }

  /**
   * Every day that is set by hand, or can be counted back from the fitting. A stage begins so many
   * days before the next as it takes; a visit is due on the day on which it begins, work of the
   * laboratory on the day on which the next stage begins.
   */
  static Map<TreatmentStage, LocalDate> due(StagePlan plan) {
    WorkingDays days = new WorkingDays(plan.everyDay());
    Map<TreatmentStage, LocalDate> out = new EnumMap<>(TreatmentStage.class);
    Optional<LocalDate> next = plan.fitting();
    for (int i = TreatmentStage.DELIVERY.ordinal(); i >= 0; i--) {
      TreatmentStage stage = TreatmentStage.values()[i];
      PlannedStage at = plan.at(stage);
      if (at.leftOut()) {
        continue;
      }
      boolean visit = isVisit(stage);
      Optional<Integer> takes = stage == TreatmentStage.DELIVERY ? Optional.of(0) : at.days();
      Optional<LocalDate> end = visit || at.due().isEmpty() ? next : at.due();
      Optional<LocalDate> begin = end.flatMap(d -> takes.map(n -> days.before(d, n)));
      if (visit && at.due().isPresent()) {
        begin = at.due();
      }
      (visit ? begin : end).ifPresent(d -> out.put(stage, d));
      next = begin;
    }
    PlannedStage review = plan.at(TreatmentStage.REVIEW);
    if (!review.leftOut()) {
      PlannedStage delivery = plan.at(TreatmentStage.DELIVERY);
      Optional<LocalDate> fitted = delivery.done().or(delivery::due).or(plan::fitting);
      review
          .due()
          .or(() -> fitted.flatMap(f -> delivery.days().map(n -> days.before(f, -n))))
          .ifPresent(d -> out.put(TreatmentStage.REVIEW, d));
    }
    return out;
  }

  private static boolean isVisit(TreatmentStage stage) {
    return stage.place() == TreatmentStage.Place.CLINIC;
  }

  /** Stages whose days are wanting because an open stage is counted back over them. */
  private static List<TreatmentStage> unset(StagePlan plan) {
    List<TreatmentStage> out = new ArrayList<>();
    boolean waiting = false;
    for (TreatmentStage stage : TreatmentStage.values()) {
      PlannedStage at = plan.at(stage);
      if (stage.compareTo(TreatmentStage.DELIVERY) >= 0) {
        break;
      }
      if (at.leftOut()) {
        continue;
      }
      boolean open = at.done().isEmpty() && at.due().isEmpty();
      boolean over = isVisit(stage) ? (waiting || open) && at.due().isEmpty() : waiting;
      if (over && at.days().isEmpty()) {
        out.add(stage);
      }
      waiting = at.due().isEmpty() && (waiting || open);
    }
    return out;
  }

  private static List<String> plainRemarks(StagePlan plan, LocalDate today) {
    List<String> out = new ArrayList<>();
    WorkingDays days = new WorkingDays(plan.everyDay());
    plan.fitting()
        .filter(d -> !days.counts(d))
        .ifPresent(
            d ->
                out.add(
                    "The fitting on "
                        + Dates.withWeekday(d)
                        + " falls on a day that is not counted as a working day."));
    TreatmentStage before = null;
    for (TreatmentStage stage : TreatmentStage.values()) {
      Optional<LocalDate> done = plan.at(stage).done();
      if (done.filter(d -> d.isAfter(today)).isPresent()) {
        out.add(
            "“"
                + stage.title()
                + "” is noted as done on "
                + Dates.words(done.get())
                + ", which is still"
                + " to come.");
      }
      if (done.isPresent()) {
        if (before != null && plan.at(before).done().get().isAfter(done.get())) {
          out.add(
              "“"
                  + stage.title()
                  + "” is dated "
                  + Dates.words(done.get())
                  + ", before “"
                  + before.title()
                  + "” on "
                  + Dates.words(plan.at(before).done().get())
                  + ".");
        }
        before = stage;
      }
    }
    return out;
  }

  public Row at(TreatmentStage stage) {
    return rows.get(stage.ordinal());
  }

  /** What must be set before every open stage has a date; a sentence, or nothing. */
  public Optional<String> wanting() {
    boolean open =
        rows.stream()
            .anyMatch(
                r ->
                    r.isActive()
                        && !r.isDone()
                        && r.due().isEmpty()
                        && r.stage() != TreatmentStage.REVIEW);
    if (!open) {
      return Optional.empty();
    }
    if (plan.fitting().isEmpty()) {
      return Optional.of("Set the day of the fitting, from which the others are counted back.");
    }
    return unset.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Set the days for: "
                + unset.stream().map(StageWords::inside).collect(Collectors.joining("; "))
                + ".");
  }

  /** The timetable as plain text. */
  public String toText() {
    StringBuilder out = new StringBuilder("Stages as on ").append(Dates.words(today)).append("; ");
    out.append(
        plan.fitting()
            .map(d -> "fitting on " + Dates.withWeekday(d))
            .orElse("no day set for the fitting"));
    out.append(plan.everyDay() ? "; every day counts.\n\n" : "; Monday to Friday count.\n\n");
    int width = rows.stream().mapToInt(r -> r.stage().title().length()).max().orElse(0);
    String form = "%-9s %-" + width + "s  %-10s %4s  %-21s  %s";
    out.append(line(form, "", "Stage", "Where", "Days", "Due", "Done"));
    for (Row r : rows) {
      PlannedStage p = r.planned();
      out.append(
          line(
              form,
              r.state().words(),
              r.stage().title(),
              r.stage().place().name().toLowerCase(Locale.ROOT),
              p.days().map(d -> Integer.toString(d)).orElse("–"),
              r.due().map(d -> Dates.brief(d)).orElse("–") + p.time().map(t -> " " + t).orElse(""),
              p.done().map(Dates::brief).orElse("–") + (p.by().isBlank() ? "" : ", " + p.by())));
      for (Gate g : r.gates()) {
        out.append("          ").append(g.closed() ? "closed: " : "note: ").append(g.words());
        out.append('\n');
      }
    }
    plan.requested()
        .ifPresent(
            s -> out.append("\nAsked of the laboratory now: ").append(s.title()).append(".\n"));
    wanting().ifPresent(w -> out.append('\n').append(w).append('\n'));
    if (!remarks.isEmpty()) {
      out.append("\nOut of order\n");
      remarks.forEach(r -> out.append("  ").append(r).append('\n'));
    }
    return out.toString();
  }

  private static String line(String form, Object... values) {
    return String.format(Locale.ROOT, form, values).stripTrailing() + "\n";
  }
}
