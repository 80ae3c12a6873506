package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Gate;
import saddlewright.prescription.Timetable;

/** A Task for each stage of the plan. */
final class Stages {
  private final Order order;
  private final People people;

  private Stages(Order order, People people) {
    this.order = order;
    this.people = people;
  }

  /** None for an exercise, which asks nobody for work, nor where nothing has been planned. */
  static void write(Order order, People people, List<Denture> dentures, Entries entries) {
    if (order.coursework() || order.details().stages().equals(StagePlan.EMPTY)) {
      return;
    }
    Stages stages = new Stages(order, people);
    for (Timetable.Row row : Timetable.of(order.assessment(), Notation.FDI, order.date()).rows()) {
      entries.add(stages.task(row, dentures));
    }
  }

  private Resource task(Timetable.Row row, List<Denture> dentures) {
    TreatmentStage stage = row.stage();
    String name = CodeList.codeOf(stage);
    boolean asked = isAsked(row);
    Resource r = order.resource("Task", "stage/" + name);
    r.narrative(
        List.of(
            stage.title() + ": " + row.state().words() + (asked ? ", requested now" : ""),
            row.due().map(d -> "Due " + d).orElse("")));
    r.identifier(IdentifierSystem.STAGE, order.name(name));
    dentures.forEach(d -> r.add("basedOn", d.request()));
    r.set(
        "groupIdentifier",
        DataTypes.identifier(IdentifierSystem.PRESCRIPTION, order.name(order.revision().number())));
    r.put("status", status(row, asked));
    closed(row).ifPresent(g -> r.set("statusReason", DataTypes.words(g)));
    r.set("businessStatus", LocalCodes.PROGRESS.concept(row.state()));
    r.put("intent", asked ? "order" : "plan");
    r.set("code", LocalCodes.STAGE.concept(stage));
    r.put("description", stage.title());
    dentures.stream().findFirst().ifPresent(d -> r.set("focus", d.request()));
    r.set("for", people.patient());
    r.set("executionPeriod", DataTypes.until(row.planned().done()));
    r.put("authoredOn", DataTypes.date(order.date()));
    people.requester().ifPresent(p -> r.set("requester", p));
    owner(stage).ifPresent(o -> r.set("owner", o));
    notes(row).forEach(n -> r.add("note", DataTypes.note(n)));
    ObjectNode restriction = DataTypes.object();
    ObjectNode until = DataTypes.until(row.due());
    if (!until.isEmpty()) {
      restriction.set("period", until);
    }
    return r.set("restriction", restriction);
  }

  /** Whether the laboratory may begin with it: asked for, in an order that holds. */
  private boolean isAsked(Timetable.Row row) {
    return order.details().stages().requested().filter(s -> s == row.stage()).isPresent()
        && row.isActive()
        && !row.isDone()
        && !row.isClosed()
        && order.actionable();
  }

  private static String status(Timetable.Row row, boolean asked) {
    if (row.isDone()) {
      return "completed";
    }
    if (!row.isActive()) {
      return "cancelled";
    }
    return asked ? "requested" : "draft";
  }

  /** What bars a stage, in words. */
  private static Optional<String> closed(Timetable.Row row) {
    List<String> gaps = row.gates().stream().filter(Gate::closed).map(Gate::words).toList();
    return gaps.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", gaps));
  }

  private Optional<Resource> owner(TreatmentStage stage) {
    return stage.place() == TreatmentStage.Place.LABORATORY
        ? people.performer()
        : people.requester();
  }

  private static List<String> notes(Timetable.Row row) {
    List<String> out = new ArrayList<>();
    // FHIR writes no time of day without a time zone, and a case has no zone.
    row.planned().time().ifPresent(t -> out.add("Wanted by " + t + ", local time."));
    if (row.isDone() && !row.planned().by().isBlank()) {
      out.add("Done by " + row.planned().by() + ".");
    }
    row.gates().stream().filter(g -> !g.closed()).forEach(g -> out.add(g.words()));
    return out;
  }
}
