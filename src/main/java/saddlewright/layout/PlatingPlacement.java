package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.design.Plating;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/** Lays out plating: from the scalloped edge on the teeth down to the major connector. */
final class PlatingPlacement {
  /** How far it runs into the connector, so that both are one casting, mm. */
  private static final double LAP = 1;

  /** Farthest connector down to which it is carried in its whole width, mm from the necks. */
  private static final double REACH = 8;

  /** Width of the strut by which a farther connector carries it, mm. */
  private static final double STEM = 4.5;

  /** How far it goes below the necks when there is no connector, mm. */
  private static final double APRON = 2.5;

  /** Radius of outer corners, mm. */
  private static final double CORNER = 0.5;

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
    lower = Fairing.mean(Fairing.mean(lower, 3), 2);
    List<Point> ring = new ArrayList<>(edge.points());
    List<Point> back = new ArrayList<>(ridge.curve(lower, from, to).points());
    Collections.reverse(back);
    ring.addAll(back);
    Region body =
        stemmed(Outline.of(ring).toRegion().rounded(CORNER), ridge.at((from + to) / 2, 0.01));
    return Laid.of(plating, Substance.CAST_METAL, body)
        .withDetails(List.of(edge))
        .with(Measure.LENGTH, edge.length())
        .with(Measure.AREA_MM2, body.area());
  }

  /** The plate with a strut to a connector that lies too far off to be met by the plate itself. */
  private Region stemmed(Region plate, Point middle) {
    if (ground.connector().isEmpty() || ground.connector().get().body().isEmpty()) {
      return plate;
    }
    Region metal = ground.connector().get().body();
    if (plate.isEmpty() || plate.intersects(metal)) {
      return plate;
    }
    Point foot = metal.nearest(middle);
    Point root = plate.nearest(foot);
    Vector way = root.distanceTo(foot) < 1e-6 ? new Vector(0, 1) : root.to(foot).unit();
    return plate.plus(Region.band(Path.of(root.minus(way), foot.plus(way)), STEM));
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
