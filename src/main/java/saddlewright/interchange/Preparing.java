package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.dentition.Notation;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.PreparationPlan.Entry;
import saddlewright.prescription.PreparationPlan.Origin;

/** A ServiceRequest for each mouth preparation, and a Procedure for each that has been done. */
final class Preparing {
  private final Order order;
  private final People people;

  private Preparing(Order order, People people) {
    this.order = order;
    this.people = people;
  }

  static void write(Order order, People people, List<Denture> dentures, Entries entries) {
    Preparing preparing = new Preparing(order, people);
    PreparationPlan plan = PreparationPlan.of(order.assessment(), Notation.FDI);
    for (Entry e : plan.entries()) {
      Resource r = entries.add(preparing.request(e, plan.gaps(e)));
      dentures.stream()
          .filter(d -> d.arch() == e.arch())
          .forEach(d -> r.add("supportingInfo", d.request()));
      if (e.isDone() && !order.coursework()) {
        entries.add(preparing.procedure(e, r));
      }
    }
  }

  private Resource request(Entry e, List<String> gaps) {
    Resource r = order.resource("ServiceRequest", "preparation/" + e.key());
    r.narrative(
        List.of(
            e.kind().title() + ": " + e.place() + ", " + e.standing(),
            e.target(),
            e.purpose().isBlank() ? "" : "For: " + e.purpose()));
    r.identifier(IdentifierSystem.PREPARATION, order.name(e.key()));
    r.put("status", status(e));
    // The prescriber's own plan: it gives nobody else leave to touch a tooth.
    r.put("intent", order.coursework() ? order.intent() : "plan");
    r.set("code", LocalCodes.PREPARATION.concept(e.kind()));
    if (!e.surface().isBlank()) {
      r.add("orderDetail", site(e));
    }
    r.add("orderDetail", DataTypes.words(e.target()));
    r.set("subject", people.patient());
    r.put("authoredOn", DataTypes.date(order.date()));
    people.requester().ifPresent(q -> r.set("requester", q));
    if (!e.purpose().isBlank()) {
      r.add("reasonCode", DataTypes.words(e.purpose()));
    }
    e.teeth().forEach(t -> r.add("bodySite", LocalCodes.tooth(t)));
    notes(e, gaps).forEach(n -> r.add("note", DataTypes.note(n)));
    return r;
  }

  private String status(Entry e) {
    if (order.coursework()) {
      return "draft";
    }
    return switch (e.mark().state()) {
      case DONE, CHECKED -> "completed";
      case DECLINED -> "revoked";
      case PLANNED ->
          e.origin() == Origin.FORMER
              ? "revoked"
              : order.signature().isPresent() ? "active" : "draft";
    };
  }

  private static List<String> notes(Entry e, List<String> gaps) {
    List<String> out = new ArrayList<>();
    PreparationMark mark = e.mark();
    out.add(mark.note());
    if (mark.state() != PreparationMark.State.PLANNED || e.origin() == Origin.FORMER) {
      out.add("State: " + e.standing() + ".");
    }
    e.warnings().forEach(w -> out.add("Caution: " + w.sentence()));
    gaps.forEach(g -> out.add("Wanting: " + g));
    e.source().ifPresent(s -> out.add("Sizes: " + s.words()));
    out.removeIf(String::isBlank);
    return out;
  }

  private static ObjectNode site(Entry e) {
    Optional<String> code =
        e.teeth().isEmpty() ? Optional.empty() : ToothSite.codeOf(e.teeth().get(0), e.surface());
    return code.map(c -> LocalCodes.TOOTH_SITE.concept(c, e.surface()))
        .orElseGet(() -> DataTypes.words(e.surface()));
  }

  private Resource procedure(Entry e, Resource request) {
    Resource r = order.resource("Procedure", "preparation/" + e.key());
    r.narrative(List.of(e.kind().title() + ": " + e.place() + ", " + e.standing()));
    r.identifier(IdentifierSystem.PREPARATION, order.name(e.key()));
    r.add("basedOn", request);
    r.put("status", "completed");
    r.set("code", LocalCodes.PREPARATION.concept(e.kind()));
    r.set("subject", people.patient());
    r.put("performedDateTime", e.mark().on().flatMap(DataTypes::date));
    if (!e.mark().by().isBlank()) {
      ObjectNode performer = DataTypes.object();
      performer.set("actor", DataTypes.named(e.mark().by()));
      r.add("performer", performer);
    }
    e.teeth().forEach(t -> r.add("bodySite", LocalCodes.tooth(t)));
    return r;
  }
}
