package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;

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
    StagePlan plan = order.details().stages();
    if (order.coursework() || plan.equals(StagePlan.EMPTY)) {
      return;
    }
    Stages stages = new Stages(order, people);
    for (TreatmentStage s : TreatmentStage.values()) {
      if (!plan.at(s).leftOut()) {
        entries.add(stages.task(s, plan.at(s), dentures));
      }
    }
  }

  private Resource task(TreatmentStage stage, PlannedStage planned, List<Denture> dentures) {
    boolean requested =
        order.details().stages().requested().filter(s -> s == stage).isPresent()
            && planned.done().isEmpty();
    String progress = planned.done().isPresent() ? "done" : requested ? "requested" : "open";
    String name = CodeList.codeOf(stage);
    Resource r = order.resource("Task", "stage/" + name);
    r.narrative(
        List.of(
            stage.title(),
            LocalCodes.PROGRESS.code(progress).display(),
            planned.due().map(d -> "Due " + d).orElse("")));
    r.identifier(IdentifierSystem.STAGE, order.name(name));
    dentures.forEach(d -> r.add("basedOn", d.request()));
    r.set(
        "groupIdentifier",
        DataTypes.identifier(IdentifierSystem.PRESCRIPTION, order.name(order.revision().number())));
    r.put("status", status(requested, planned));
    r.set("businessStatus", LocalCodes.PROGRESS.concept(progress));
    r.put("intent", requested && order.actionable() ? "order" : "plan");
    r.set("code", LocalCodes.STAGE.concept(stage));
    r.put("description", stage.title());
    dentures.stream().findFirst().ifPresent(d -> r.set("focus", d.request()));
    r.set("for", people.patient());
    r.set("executionPeriod", DataTypes.period(Optional.empty(), planned.done()));
    r.put("authoredOn", order.date().toString());
    people.requester().ifPresent(p -> r.set("requester", p));
    owner(stage).ifPresent(o -> r.set("owner", o));
    time(planned).ifPresent(n -> r.add("note", DataTypes.note(n)));
    ObjectNode restriction = DataTypes.object();
    ObjectNode until = DataTypes.period(Optional.empty(), planned.due());
    if (!until.isEmpty()) {
      restriction.set("period", until);
    }
    return r.set("restriction", restriction);
  }

  private String status(boolean requested, PlannedStage planned) {
    if (planned.done().isPresent()) {
      return "completed";
    }
    return requested && order.actionable() ? "requested" : "draft";
  }

  private Optional<Resource> owner(TreatmentStage stage) {
    return stage.place() == TreatmentStage.Place.LABORATORY
        ? people.performer()
        : people.requester();
  }

  /** A time of day in words: FHIR writes none without a time zone, and a case has no zone. */
  private static Optional<String> time(PlannedStage planned) {
    return planned.time().map(t -> "Wanted by " + t + ", local time.");
  }
}
