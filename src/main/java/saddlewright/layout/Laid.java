package saddlewright.layout;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.design.Component;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * A component with its place on the arch form, in the frame of the arch.
 *
 * @param component what was laid out
 * @param substance what its body is made of
 * @param body the area that it covers seen from above; empty where it has none
 * @param centreline of an arm, bar or strut, from root to tip
 * @param tip the retentive tip
 * @param details lines that belong to it: mesh strands, finish line, dam, leader
 * @param measures what can be read off
 */
public record Laid(
    Component component,
    Substance substance,
    Region body,
    Optional<Path> centreline,
    Optional<Point> tip,
    List<Path> details,
    Map<Measure, Double> measures) {

  public Laid {
    details = List.copyOf(details);
    Map<Measure, Double> m = new EnumMap<>(Measure.class);
    m.putAll(measures);
    measures = Collections.unmodifiableMap(m);
  }

  public static Laid of(Component component, Substance substance, Region body) {
    return new Laid(
        component, substance, body, Optional.empty(), Optional.empty(), List.of(), Map.of());
  }

  public Laid withBody(Region other) {
    return new Laid(component, substance, other, centreline, tip, details, measures);
  }

  public Laid withCentreline(Path path) {
    return new Laid(component, substance, body, Optional.of(path), tip, details, measures);
  }

  public Laid withTip(Point point) {
    return new Laid(component, substance, body, centreline, Optional.of(point), details, measures);
  }

  public Laid withDetails(List<Path> paths) {
    return new Laid(component, substance, body, centreline, tip, paths, measures);
  }

  public Laid with(Measure measure, double value) {
    Map<Measure, Double> m = new EnumMap<>(Measure.class);
    m.putAll(measures);
    m.put(measure, value);
    return new Laid(component, substance, body, centreline, tip, details, m);
  }

  public OptionalDouble measure(Measure measure) {
    Double v = measures.get(measure);
    return v == null ? OptionalDouble.empty() : OptionalDouble.of(v);
  }
}
