package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.drawing.Callout;

/** The numbers of components: their order in the {@link Schedule}, through both arches. */
public final class ComponentNumbers {
  private static final Comparator<Component> READING_ORDER =
      Comparator.comparing((Component c) -> c.accept(ComponentPlace.FINDER).category())
          .thenComparing(c -> !c.accept(ComponentPlace.FINDER).wholeArch())
          .thenComparing(
              c -> {
                ComponentPlace p = c.accept(ComponentPlace.FINDER);
                return p.wholeArch() ? p.rank() : -1;
              })
          .thenComparing(c -> c.teeth().isEmpty() ? -1 : c.teeth().get(0).place())
          .thenComparing(c -> c.accept(ComponentPlace.FINDER).rank())
          .thenComparing(c -> c.teeth().size())
          .thenComparing(Component::id);

  private ComponentNumbers() {}

  /** The components of a design in the order of the schedule. */
  static List<Component> inOrder(ArchDesign design) {
    List<Component> out = new ArrayList<>(design.components());
    out.sort(READING_ORDER);
    return out;
  }

  /** The numbers of all components of a case, to be drawn beside them. */
  public static List<Callout> callouts(Case c) {
    List<Callout> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      for (Component part : inOrder(c.design(arch))) {
        out.add(Callout.number(Subject.of(arch, part), out.size() + 1));
      }
    }
    return out;
  }
}
