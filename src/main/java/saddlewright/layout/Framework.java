package saddlewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import saddlewright.archform.Once;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.geometry.Box;
import saddlewright.geometry.Region;

/**
 * What holds together: bodies that touch or overlap, seen from above.
 *
 * <p>Acrylic counts, since a saddle joins what is embedded in it. The main part is the one that
 * holds the major connector, or failing that the largest saddle.
 */
public final class Framework {
  /** Bodies closer than this, in mm, are one casting. */
  private static final double TOUCHING_MM = 0.15;

  /** A plate on the tooth is run up to the seat of its rest over this gap, in mm. */
  private static final double RUN_UP_MM = 0.5;

  private final Map<ComponentId, Laid> bodies;
  private final Set<ComponentId> joined;

  /** Found when first asked for, since most layouts are never asked. */
  private final Once<Region> metal;

  private Framework(List<Region> cast, Map<ComponentId, Laid> bodies, Set<ComponentId> joined) {
    List<Region> parts = List.copyOf(cast);
    this.metal = new Once<>(() -> Region.union(parts));
    this.bodies = bodies;
    this.joined = joined;
  }

  static Framework of(List<Laid> all) {
    Map<ComponentId, Laid> bodies = new LinkedHashMap<>();
    List<Region> cast = new ArrayList<>();
    for (Laid l : all) {
      if (l.substance() != Substance.NONE && !l.body().isEmpty()) {
        bodies.put(l.component().id(), l);
        if (l.substance() == Substance.CAST_METAL) {
          cast.add(l.body());
        }
      }
    }
    return new Framework(cast, bodies, reach(bodies));
  }

  private static Set<ComponentId> reach(Map<ComponentId, Laid> bodies) {
    Set<ComponentId> joined = new HashSet<>();
    List<Laid> open = new ArrayList<>();
    root(bodies)
        .forEach(
            l -> {
              joined.add(l.component().id());
              open.add(l);
            });
    while (!open.isEmpty()) {
      Laid here = open.remove(open.size() - 1);
      var reach = here.body().box().grown(RUN_UP_MM);
      for (Laid other : bodies.values()) {
        if (!joined.contains(other.component().id())
            && reach.overlaps(other.body().box())
            && here.body().isWithin(other.body(), joint(here, other))) {
          joined.add(other.component().id());
          open.add(other);
        }
      }
    }
    return joined;
  }

  /** How close two bodies must come to be one casting. */
  private static double joint(Laid a, Laid b) {
    return isPlate(a.component()) && b.component() instanceof Rest
            || isPlate(b.component()) && a.component() instanceof Rest
        ? RUN_UP_MM
        : TOUCHING_MM;
  }

  private static boolean isPlate(Component c) {
    return c instanceof Plating
        || c instanceof MajorConnector m && m.form() == ConnectorForm.LINGUAL_PLATE;
  }

  private static List<Laid> root(Map<ComponentId, Laid> bodies) {
    Laid best = null;
    for (Laid l : bodies.values()) {
      if (l.component() instanceof MajorConnector) {
        return List.of(l);
      }
      if (l.component() instanceof Saddle
          && (best == null || l.body().area() > best.body().area())) {
        best = l;
      }
    }
    return best == null ? List.of() : List.of(best);
  }

  /** All cast metal as one region. */
  public Region metal() {
    return metal.get();
  }

  /** Whether the component has a body and hangs together with the main part. */
  public boolean isJoined(ComponentId id) {
    return joined.contains(id);
  }

  /** Distance in mm from a component's body to the nearest joined one; empty without a body. */
  public OptionalDouble gap(ComponentId id) {
    Laid l = bodies.get(id);
    if (l == null) {
      return OptionalDouble.empty();
    }
    if (joined.contains(id)) {
      return OptionalDouble.of(0);
    }
    Box own = l.body().box();
    List<Laid> near = new ArrayList<>();
    for (ComponentId other : joined) {
      near.add(bodies.get(other));
    }
    near.sort(Comparator.comparingDouble(o -> o.body().box().distanceTo(own)));
    double least = Double.POSITIVE_INFINITY;
    for (Laid o : near) {
      if (o.body().box().distanceTo(own) >= least) {
        break;
      }
      least = Math.min(least, o.body().distanceTo(l.body()));
    }
    return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
  }
}
