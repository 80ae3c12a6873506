package saddlewright.desktop.sheet.handles;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.design.ComponentId;
import saddlewright.rules.Situation;

/**
 * Something of a component that can be taken hold of and moved.
 *
 * @param id stable name among the handles of its component, in kebab case
 * @param name what it is, in words
 * @param arch where its component belongs
 * @param component its component
 * @param track where it can be moved to
 * @param gauges what is watched while it moves
 */
public record Handle(
    String id, String name, Arch arch, ComponentId component, Track track, List<Gauge> gauges) {
  public Handle {
    gauges = List.copyOf(gauges);
  }

  /** What the gauges say of the component in a design, warnings first. */
  public List<Reading> readings(Situation s) {
    return gauges.stream()
        .flatMap(g -> g.read(s, component).stream())
        .distinct()
        .sorted((a, b) -> Boolean.compare(b.warning(), a.warning()))
        .toList();
  }
}
