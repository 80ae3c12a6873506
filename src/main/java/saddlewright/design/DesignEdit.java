package saddlewright.design;

import java.util.List;

/** A change to the design of one arch, as data: it can be shown before it is made. */
public sealed interface DesignEdit {
  ArchDesign applyTo(ArchDesign design);

  /** Adds a component; one with a used id takes a fresh one. */
  record Place(Component component) implements DesignEdit {
    @Override
    public ArchDesign applyTo(ArchDesign design) {
      Component c = component;
      if (design.find(c.id()).isPresent()) {
        c = c.withId(design.freshId(c.id().value().replaceAll("-\\d+$", "")));
      }
      return design.plus(c);
    }
  }

  /** Puts a component in the place of the one with the same id. */
  record Change(Component component) implements DesignEdit {
    @Override
    public ArchDesign applyTo(ArchDesign design) {
      return design.with(component);
    }
  }

  record Remove(ComponentId id) implements DesignEdit {
    @Override
    public ArchDesign applyTo(ArchDesign design) {
      return design.without(id);
    }
  }

  /** Several edits as one, made in order and undone together. */
  record Several(List<DesignEdit> edits) implements DesignEdit {
    public Several {
      edits = List.copyOf(edits);
    }

    @Override
    public ArchDesign applyTo(ArchDesign design) {
      ArchDesign d = design;
      for (DesignEdit e : edits) {
        d = e.applyTo(d);
      }
      return d;
    }
  }

  static DesignEdit several(DesignEdit... edits) {
    return new Several(List.of(edits));
  }
}
