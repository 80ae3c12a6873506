package saddlewright.design;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Side;
import saddlewright.design.transfer.Bearing;

/**
 * Components with their like on the other side of the arch.
 *
 * @param placed the likes that can be there, with the ids of what they are the likes of
 * @param left what has no place there: a clasp whose counterpart tooth is missing, a saddle where
 *     teeth stand, a connector, of which an arch has one
 */
public record Mirrored(List<Component> placed, List<Component> left) {
  public Mirrored {
    placed = List.copyOf(placed);
    left = List.copyOf(left);
  }

  /** The likes of components; those that are there already are neither placed nor left. */
  public static Mirrored of(ArchChart chart, ArchDesign design, Collection<Component> parts) {
    Unit unit = Unit.in(design);
    List<Component> left = new ArrayList<>();
    for (Component c : parts) {
      Component like = c.mirrored(c.id());
      if (isWhole(c) || !Bearing.faults(chart, like).isEmpty()) {
        left.add(c);
      } else {
        unit.plus(like);
      }
    }
    return new Mirrored(unit.parts(), left);
  }

  /**
   * The edit that makes one side of a design like the other: what lies on that side alone goes, and
   * the likes of what lies on this side alone come.
   */
  public static Optional<DesignEdit> side(ArchChart chart, ArchDesign design, Side from) {
    List<Component> here = on(design, from);
    List<Component> there = on(design, from == Side.RIGHT ? Side.LEFT : Side.RIGHT);
    ArchDesign bare = design;
    for (Component c : there) {
      bare = bare.without(c.id());
    }
    Mirrored likes = of(chart, bare, here);
    List<DesignEdit> edits = new ArrayList<>();
    // What is on the other side as it should be keeps its id, and what was said of it.
    for (Component c : there) {
      if (likes.placed().stream().noneMatch(l -> l.withId(c.id()).equals(c))) {
        edits.add(new DesignEdit.Remove(c.id()));
      }
    }
    for (Component l : likes.placed()) {
      if (there.stream().noneMatch(c -> l.withId(c.id()).equals(c))) {
        edits.add(new DesignEdit.Place(l));
      }
    }
    return edits.isEmpty() ? Optional.empty() : Optional.of(new DesignEdit.Several(edits));
  }

  /** What lies on one side of the arch alone. */
  public static List<Component> on(ArchDesign design, Side side) {
    return design.components().stream()
        .filter(c -> !isWhole(c) && !c.teeth().isEmpty())
        .filter(c -> c.teeth().stream().allMatch(t -> t.side() == side))
        .toList();
  }

  /** The edit that places the likes; empty when there are none. */
  public Optional<DesignEdit> edit() {
    return placed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DesignEdit.Several(
                placed.stream().<DesignEdit>map(DesignEdit.Place::new).toList()));
  }

  /** Belongs to the arch as a whole, so that it has no like on the other side. */
  private static boolean isWhole(Component c) {
    return c instanceof MajorConnector
        || c instanceof PostDam
        || c instanceof Relief
        || c instanceof UnknownComponent;
  }
}
