package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.design.Plating;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/** Lays out plating: from the scalloped edge on the teeth down to the major connector. */
final class PlatingPlacement {
  /** How far it runs into the connector, so that both are one casting, mm. */
  private static final double LAP = 1;
  /** Farthest connector that it is carried down to, mm from the necks. */
  private static final double REACH = 14;
  /** How far it goes below the necks when there is no connector, mm. */
  private static final double APRON = 2.5;

  private final Ground ground;

  PlatingPlacement(Ground ground) {
    this.ground = ground;
  }

  Laid lay(Plating plating) {
    Path edge = ScallopedEdge.over(ground, plating.span());
    RidgeFrame ridge = ground.ridge();
    double from = ridge.arcOf(edge.start());
    double to = ridge.arcOf(edge.end());
    if (to < from + 0.5) {
      to = from + 0.5;
    }
    double[] lower = new double[ridge.size()];
    for (int i = 0; i < lower.length; i++) {
      double arc = ridge.arc(i);
      lower[i] =
          arc < from - 3 || arc > to + 3
              ? ridge.lingualMargin(arc) + APRON
              : connectorAt(arc, ridge.lingualMargin(arc));
    }
    lower = Fairing.mean(lower, 2);
    List<Point> ring = new ArrayList<>(edge.points());
    List<Point> back = new ArrayList<>(ridge.curve(lower, from, to).points());
    Collections.reverse(back);
    ring.addAll(back);
    Region body = Outline.of(ring).toRegion();
    return Laid.of(plating, Substance.CAST_METAL, body)
        .withDetails(List.of(edge))
        .with(Measure.LENGTH, edge.length())
        .with(Measure.AREA_MM2, body.area());
  }

  private double connectorAt(double arc, double margin) {
    if (ground.connector().isPresent()) {
      Region metal = ground.connector().get().body();
      RidgeFrame ridge = ground.ridge();
      Path ray = Path.of(ridge.at(arc, 0.01), ridge.at(arc, margin + REACH));
      List<Path> hits = metal.inside(ray);
      if (!hits.isEmpty()) {
        double near = hits.get(0).start().distanceTo(ray.start());
        double thick = hits.get(0).length();
        return Math.max(margin, near + Math.min(LAP, thick));
      }
    }
    return margin + APRON;
  }
}
