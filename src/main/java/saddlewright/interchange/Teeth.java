package saddlewright.interchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;

/** A BodyStructure for each tooth of which an order has something to say. */
final class Teeth {
  private final Map<Tooth, Resource> structures = new EnumMap<>(Tooth.class);

  private Teeth() {}

  static Teeth of(Order order, People people, Entries entries) {
    Teeth teeth = new Teeth();
    for (Arch arch : Arch.values()) {
      for (Tooth t : Tooth.in(arch)) {
        ToothState.of(order.assessment(), t)
            .map(s -> structure(order, people, t, s))
            .map(entries::add)
            .ifPresent(r -> teeth.structures.put(t, r));
      }
    }
    return teeth;
  }

  /** Those of one arch, along it. */
  List<Resource> in(Arch arch) {
    return Tooth.in(arch).stream()
        .map(t -> Optional.ofNullable(structures.get(t)))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Resource structure(Order order, People people, Tooth tooth, ToothState state) {
    ToothFindings f = order.assessment().arch(tooth.arch()).chart().tooth(tooth);
    String said = String.join("; ", words(state, f));
    Resource r = order.resource("BodyStructure", "tooth/" + tooth);
    r.narrative(List.of(tooth + ", " + ToothNames.full(tooth) + ": " + said));
    r.identifier(IdentifierSystem.TOOTH, order.name(tooth.toString()));
    r.put("active", true);
    r.set("morphology", LocalCodes.TOOTH_STATE.concept(state));
    r.set("location", LocalCodes.tooth(tooth));
    r.put("description", said);
    return r.set("patient", people.patient());
  }

  private static List<String> words(ToothState state, ToothFindings f) {
    List<String> out = new ArrayList<>();
    out.add(state.words());
    if (f.status() == ToothStatus.STANDING) {
      f.condition().ifPresent(c -> out.add(condition(c)));
      f.mobility().ifPresent(m -> out.add("mobility grade " + m));
      f.boneSupportPercent()
          .ifPresent(b -> out.add(String.format(Locale.ROOT, "%.0f %% of the bone left", b)));
      if (f.doubtful() && state != ToothState.DOUBTFUL) {
        out.add("of doubtful prognosis");
      }
    } else {
      out.add(gap(f.gap()));
    }
    return out;
  }

  private static String condition(Condition c) {
    return switch (c) {
      case SOUND -> "sound";
      case RESTORED -> "restored";
      case AMALGAM -> "restored with amalgam";
      case CROWNED -> "crowned";
      case CARIOUS -> "carious";
      case ROOT_FILLED -> "root filled";
    };
  }

  private static String gap(GapDecision g) {
    return switch (g) {
      case REPLACED -> "to be replaced";
      case NOT_REPLACED -> "not replaced";
      case CLOSED -> "space closed";
    };
  }
}
