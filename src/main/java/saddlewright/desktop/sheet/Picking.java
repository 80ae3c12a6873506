package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import saddlewright.dentition.Tooth;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.desktop.tools.Aim;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.rules.Situation;

/** Finds what lies under a point of an arch, the smallest thing first. */
public final class Picking {
  /** Lines are taken hold of from this far off, mm. */
  private static final double GRASP = 1.0;

  private record Hit(Subject subject, double size) {}

  private Picking() {}

  /** All subjects at the point: components from small to large, then the tooth or area. */
  public static List<Subject> at(Situation arch, Aim aim) {
    List<Hit> hits = new ArrayList<>();
    for (Laid laid : arch.layout().all()) {
      if (covers(laid, aim.point())) {
        double size = laid.body().isEmpty() ? 4 : laid.body().area();
        hits.add(new Hit(Subject.of(arch.arch(), laid.component()), size));
      }
    }
    hits.sort(Comparator.comparingDouble(Hit::size));
    Set<Subject> out = new LinkedHashSet<>();
    hits.forEach(h -> out.add(h.subject()));
    if (aim.inside()) {
      Tooth t = aim.tooth().orElseThrow();
      out.add(Subject.of(t));
      if (arch.chart().isLost(t)) {
        arch.classification().areaAt(t).ifPresent(a -> out.add(Subject.of(a.span())));
      }
    }
    return List.copyOf(out);
  }

  private static boolean covers(Laid laid, Point p) {
    if (!laid.body().isEmpty()) {
      return laid.body().contains(p) || laid.body().distanceTo(p) < GRASP / 3;
    }
    if (laid.component() instanceof Note n) {
      double halfWords = 0.6 * n.text().length() + 1;
      return Math.abs(p.x() - n.x()) < 2 * halfWords && Math.abs(p.y() - n.y()) < 2.2
          || leader(laid, p);
    }
    return laid.centreline().map(c -> c.distanceTo(p) < GRASP).orElse(false) || leader(laid, p);
  }

  private static boolean leader(Laid laid, Point p) {
    for (Path path : laid.details()) {
      if (path.distanceTo(p) < GRASP) {
        return true;
      }
    }
    return false;
  }
}
