package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.prescription.MouthPreparations;
import saddlewright.prescription.Preparation;
import saddlewright.prescription.ToothWords;

/** A ServiceRequest for each mouth preparation. */
final class Preparing {
  private final Order order;
  private final People people;

  private Preparing(Order order, People people) {
    this.order = order;
    this.people = people;
  }

  static void write(Order order, People people, List<Denture> dentures, Entries entries) {
    Preparing preparing = new Preparing(order, people);
    Map<String, Integer> seen = new HashMap<>();
    for (Preparation p : MouthPreparations.of(order.assessment())) {
      int nth = seen.merge(name(p), 1, Integer::sum);
      Resource r = entries.add(preparing.request(p, nth == 1 ? name(p) : name(p) + "/" + nth));
      dentures.stream()
          .filter(d -> d.arch() == p.arch())
          .forEach(d -> r.add("supportingInfo", d.request()));
    }
  }

  private Resource request(Preparation p, String name) {
    Resource r = order.resource("ServiceRequest", "preparation/" + name);
    String where =
        ToothWords.list(p.teeth(), Notation.FDI)
            + (p.surface().isBlank() ? "" : ", " + p.surface());
    r.narrative(List.of(p.kind().title() + ": " + where, p.target(), "For: " + p.reason()));
    r.identifier(IdentifierSystem.PREPARATION, order.name(name));
    r.put("status", order.status());
    r.put("intent", order.coursework() ? "proposal" : "plan");
    r.set("code", LocalCodes.PREPARATION.concept(p.kind()));
    if (!p.surface().isBlank()) {
      r.add("orderDetail", site(p));
    }
    r.add("orderDetail", DataTypes.words(p.target()));
    r.set("subject", people.patient());
    r.put("authoredOn", order.date().toString());
    people.requester().ifPresent(q -> r.set("requester", q));
    r.add("reasonCode", DataTypes.words(reason(p)));
    p.teeth().forEach(t -> r.add("bodySite", LocalCodes.TOOTH.concept(t.toString())));
    return r.add("note", DataTypes.note("Sizes: " + p.source().words()));
  }

  private static ObjectNode site(Preparation p) {
    Tooth first = p.teeth().get(0);
    return ToothSite.codeOf(first, p.surface())
        .map(code -> LocalCodes.TOOTH_SITE.concept(code, p.surface()))
        .orElseGet(() -> DataTypes.words(p.surface()));
  }

  /** What asks for it, by the names under which the components stand in the order. */
  private static String reason(Preparation p) {
    return p.components().isEmpty()
        ? p.reason()
        : p.reason()
            + " ("
            + String.join(", ", p.components().stream().map(c -> c.value()).toList())
            + ")";
  }

  /** Such as {@code rest-seat/35/mesial-occlusal}. */
  private static String name(Preparation p) {
    return CodeList.codeOf(p.kind())
        + "/"
        + p.teeth().stream().map(Tooth::toString).collect(Collectors.joining("-"))
        + (p.surface().isBlank() ? "" : "/" + p.surface().replace(' ', '-'));
  }
}
