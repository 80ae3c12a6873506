package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The preparations of one arch as they are found; those with one key are one preparation. */
final class Gathered {
  private final Situation situation;
  private final List<Preparation> out = new ArrayList<>();

  Gathered(Situation situation) {
    this.situation = situation;
  }

  List<Preparation> all() {
    return out;
  }

  /** A preparation about to be added. */
  final class Draft {
    private final PreparationKind kind;
    private final Demand demand;
    private final List<Tooth> teeth;
    private List<Tooth> told;
    private String place = "";
    private String reason = "";
    private List<ComponentId> components = List.of();
    private final List<PreparationWarning> warnings = new ArrayList<>();

    private Draft(PreparationKind kind, Demand demand, List<Tooth> teeth) {
      this.kind = kind;
      this.demand = demand;
      this.teeth = teeth.stream().sorted(Comparator.comparing(Tooth::place)).toList();
      this.told = this.teeth;
    }

    Draft at(Enum<?> where) {
      return at(PreparationKey.place(where));
    }

    Draft at(String where) {
      place = where;
      return this;
    }

    /** The teeth may change without its being another preparation. */
    Draft whateverTheTeeth() {
      told = List.of();
      return this;
    }

    Draft of(String why, Component... parts) {
      reason = why;
      components = List.of(parts).stream().map(Component::id).toList();
      return this;
    }

    Draft warn(String sentence, Source source) {
      warnings.add(new PreparationWarning(sentence, source));
      return this;
    }

    void add(String target, Source source) {
      PreparationKey key = new PreparationKey(situation.arch(), kind, told, place, demand);
      for (int i = 0; i < out.size(); i++) {
        if (out.get(i).key().equals(key)) {
          out.set(i, joined(out.get(i), target));
          return;
        }
      }
      out.add(new Preparation(key, teeth, target, components, reason, source, warnings));
    }

    private Preparation joined(Preparation p, String target) {
      Set<Tooth> allTeeth = new TreeSet<>(Comparator.comparing(Tooth::place));
      allTeeth.addAll(p.teeth());
      allTeeth.addAll(teeth);
      List<ComponentId> ids = new ArrayList<>(p.components());
      components.stream().filter(c -> !ids.contains(c)).forEach(ids::add);
      List<PreparationWarning> all = new ArrayList<>(p.warnings());
      warnings.stream().filter(w -> !all.contains(w)).forEach(all::add);
      return new Preparation(
          p.key(),
          List.copyOf(allTeeth),
          p.target().contains(target) ? p.target() : p.target() + "; " + target,
          ids,
          p.reason(),
          p.source(),
          all);
    }
  }

  Draft draft(PreparationKind kind, Demand demand, Tooth... teeth) {
    return new Draft(kind, demand, List.of(teeth));
  }

  Draft draft(PreparationKind kind, Demand demand, List<Tooth> teeth) {
    return new Draft(kind, demand, teeth);
  }
}
