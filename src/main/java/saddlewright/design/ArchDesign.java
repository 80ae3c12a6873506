package saddlewright.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/** The components designed for one arch, in the order in which they were placed. */
public record ArchDesign(Arch arch, List<Component> components) {
  public ArchDesign {
    components = List.copyOf(components);
    Set<ComponentId> seen = new HashSet<>();
    for (Component c : components) {
      if (!seen.add(c.id())) {
        throw new IllegalArgumentException("two components share the id \"" + c.id() + "\"");
      }
      for (Tooth t : c.teeth()) {
        if (t.arch() != arch) {
          throw new IllegalArgumentException(
              "component \"" + c.id() + "\" is on " + t + ", not in the " + arch.code() + " arch");
        }
      }
    }
  }

  public static ArchDesign empty(Arch arch) {
    return new ArchDesign(arch, List.of());
  }

  public Optional<Component> find(ComponentId id) {
    return components.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** All components of one kind, in order. */
  public <C extends Component> List<C> all(Class<C> kind) {
    return stream(kind).toList();
  }

  public <C extends Component> Stream<C> stream(Class<C> kind) {
    return components.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The first saddle that replaces the position. */
  public Optional<Saddle> saddleAt(Tooth tooth) {
    return stream(Saddle.class).filter(s -> s.span().contains(tooth)).findFirst();
  }

  public Optional<MajorConnector> majorConnector() {
    return stream(MajorConnector.class).findFirst();
  }

  /** Whether a rest, a clasp, a reciprocal arm, a guide plate or plating stands on the tooth. */
  public boolean usesAsAbutment(Tooth tooth) {
    return components.stream()
        .anyMatch(
            c ->
                (c instanceof Rest
                        || c instanceof Clasp
                        || c instanceof ReciprocalArm
                        || c instanceof GuidePlate
                        || c instanceof Plating)
                    && c.teeth().contains(tooth));
  }

  public ArchDesign plus(Component component) {
    List<Component> out = new ArrayList<>(components);
    out.add(component);
    return new ArchDesign(arch, out);
  }

  /** The design with the component that has this one's id replaced by it. */
  public ArchDesign with(Component component) {
    return new ArchDesign(
        arch, components.stream().map(c -> c.id().equals(component.id()) ? component : c).toList());
  }

  public ArchDesign without(ComponentId id) {
    return new ArchDesign(arch, components.stream().filter(c -> !c.id().equals(id)).toList());
  }

  /** An id that is not yet used, made of the prefix and a number. */
  public ComponentId freshId(String prefix) {
    for (int n = 1; ; n++) {
      ComponentId id = ComponentId.of(prefix + "-" + n);
      if (find(id).isEmpty()) {
        return id;
      }
    }
  }

  /** Saddles whose span touches or overlaps the given one. */
  public List<Saddle> saddlesIn(Span span) {
    return stream(Saddle.class).filter(s -> s.span().overlaps(span)).toList();
  }
}
