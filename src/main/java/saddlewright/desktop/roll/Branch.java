package saddlewright.desktop.roll;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.casefile.Assessment;
import saddlewright.chart.ArchChart;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.rules.Finding;

/**
 * A line of the list with those below it: an arch with what belongs to it as a whole and its teeth
 * in their order, an area with what lies over it and its places, a tooth with what is on it.
 */
record Branch(Row row, List<Branch> below) {
  Branch {
    below = List.copyOf(below);
  }

  /** Both arches, the upper first. */
  static List<Branch> of(Assessment now, Filter filter) {
    List<Branch> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      Branch whole = arch(now, arch);
      out.add(
          new Branch(
              whole.row, whole.below.stream().flatMap(b -> b.kept(now, filter).stream()).toList()));
    }
    return out;
  }

  private static Branch arch(Assessment now, Arch arch) {
    List<Component> left = new ArrayList<>(now.subject().design(arch).components());
    List<Branch> along = new ArrayList<>();
    List<EdentulousArea> areas = now.arch(arch).classification().areas();
    Set<EdentulousArea> met = new LinkedHashSet<>();
    for (Tooth t : Tooth.in(arch)) {
      Optional<EdentulousArea> area = areas.stream().filter(a -> a.span().contains(t)).findFirst();
      if (area.isEmpty()) {
        along.add(tooth(t, left));
      } else if (met.add(area.get())) {
        along.add(area(area.get(), left));
      }
    }
    List<Branch> below = new ArrayList<>();
    left.forEach(c -> below.add(component(arch, c)));
    below.addAll(along);
    below.add(new Branch(new Row(Row.Kind.SOFT_TISSUES, Subject.of(arch)), List.of()));
    return new Branch(new Row(Row.Kind.ARCH, Subject.of(arch)), below);
  }

  private static Branch area(EdentulousArea area, List<Component> left) {
    List<Branch> places = new ArrayList<>();
    area.span().teeth().forEach(t -> places.add(tooth(t, left)));
    List<Branch> over = new ArrayList<>();
    for (Component c : List.copyOf(left)) {
      if (!c.teeth().isEmpty() && area.span().teeth().containsAll(c.teeth())) {
        left.remove(c);
        over.add(component(area.span().arch(), c));
      }
    }
    over.addAll(places);
    return new Branch(new Row(Row.Kind.AREA, Subject.of(area.span())), over);
  }

  /** Takes what lies on the tooth alone out of what is left. */
  private static Branch tooth(Tooth tooth, List<Component> left) {
    List<Branch> on = new ArrayList<>();
    for (Component c : List.copyOf(left)) {
      if (c.teeth().equals(List.of(tooth))) {
        left.remove(c);
        on.add(component(tooth.arch(), c));
      }
    }
    return new Branch(new Row(Row.Kind.TOOTH, Subject.of(tooth)), on);
  }

  private static Branch component(Arch arch, Component c) {
    return new Branch(new Row(Row.Kind.COMPONENT, Subject.of(arch, c)), List.of());
  }

  /** What is left of it: all below a line that is wanted, and the lines above one. */
  private Optional<Branch> kept(Assessment now, Filter filter) {
    boolean wanted =
        switch (filter) {
          case ALL -> true;
          case COMPONENTS -> row.kind() == Row.Kind.COMPONENT;
          case FINDINGS -> hasFinding(now);
          case STANDING -> row.subject() instanceof Subject.OfTooth t && stands(now, t.tooth());
        };
    if (wanted && filter != Filter.FINDINGS) {
      return Optional.of(this);
    }
    List<Branch> rest = below.stream().flatMap(b -> b.kept(now, filter).stream()).toList();
    return wanted || !rest.isEmpty() ? Optional.of(new Branch(row, rest)) : Optional.empty();
  }

  private static boolean stands(Assessment now, Tooth tooth) {
    ArchChart chart = now.subject().chart(tooth.arch());
    return chart.stands(tooth);
  }

  private boolean hasFinding(Assessment now) {
    return row.kind() != Row.Kind.SOFT_TISSUES
        && now.report().standing().stream()
            .map(Finding::subjects)
            .anyMatch(s -> s.contains(row.subject()));
  }
}
