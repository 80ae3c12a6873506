package saddlewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Components that belong together and are placed as one edit; parts already there are left out. */
public final class Unit {
  private final ArchDesign design;
  private final List<Component> parts = new ArrayList<>();

  private Unit(ArchDesign design) {
    this.design = design;
  }

  /** An empty unit for a design. */
  public static Unit in(ArchDesign design) {
    return new Unit(design);
  }

  /** Adds a part unless the design or the unit already has its like under any id. */
  public Unit plus(Component part) {
    boolean there =
        design.components().stream().anyMatch(c -> same(c, part))
            || parts.stream().anyMatch(c -> same(c, part));
    if (!there) {
      parts.add(part);
    }
    return this;
  }

  public List<Component> parts() {
    return List.copyOf(parts);
  }

  /** The edit that places all parts; empty when nothing is left to place. */
  public Optional<DesignEdit> edit() {
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    List<DesignEdit> edits = new ArrayList<>();
    parts.forEach(p -> edits.add(new DesignEdit.Place(p)));
    return Optional.of(new DesignEdit.Several(edits));
  }

  static ComponentId id(String prefix) {
    return ComponentId.of(prefix + "-1");
  }

  private static boolean same(Component one, Component other) {
    return one.withId(other.id()).equals(other);
  }
}
