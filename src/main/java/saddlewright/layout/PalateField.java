package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.design.Saddle;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * The part of the palate that an upper connector may cover: up to the clearance from the palatal
 * margins of standing teeth, and into the saddles.
 */
final class PalateField {
  /** How far the connector runs in under the palatal border of a saddle, mm. */
  private static final double INTO_SADDLE = 2.2;

  /** Least width of the neck by which the connector enters a short saddle, mm (from memory). */
  private static final double LEAST_NECK = 6;

  private final RidgeFrame ridge;
  private final double[] border;
  private final List<SaddleReach> reaches;
  private final double clearance;
  private final List<Point> necks;

  PalateField(Ground ground, Span span, double clearance) {
    this.ridge = ground.ridge();
    this.clearance = clearance;
    this.necks = Necks.points(ground, Face.LINGUAL);
    List<Saddle> saddles = saddlesBeside(ground, span);
    this.reaches = saddles.stream().map(s -> SaddleReach.of(ground, s.span())).toList();
    double[] beside = ridge.clearOf(necks, clearance + 0.06, true);
    double[] raw = new double[ridge.size()];
    for (int i = 0; i < raw.length; i++) {
      // Bare ridges without a saddle are kept clear of as if teeth stood there.
      raw[i] = Math.max(beside[i], 1 + ridge.lingualMargin(ridge.arc(i)));
    }
    raw = Fairing.above(Fairing.above(raw, 4), 2);
    for (int k = 0; k < saddles.size(); k++) {
      enter(ground, saddles.get(k), reaches.get(k), raw);
    }
    this.border = softened(raw);
  }

  /** The saddles that overlap the span or lie next to its ends. */
  static List<Saddle> saddlesBeside(Ground ground, Span span) {
    Span wide =
        Span.of(
            ground.next(span.first(), -1).orElse(span.first()),
            ground.next(span.last(), 1).orElse(span.last()));
    return ground.design().saddlesIn(wide);
  }

  /** The saddles' reaches along the ridge. */
  List<SaddleReach> reaches() {
    return reaches;
  }

  /** The border moved inwards by a distance in mm, between two positions along the ridge. */
  Path border(double inwards, double from, double to) {
    return ridge.curve(moved(inwards), from, to);
  }

  /** The point of the border at a position along the ridge. */
  Point at(double arc) {
    return ridge.at(arc, ridge.read(border, arc));
  }

  /** All that lies inside the border moved inwards by a distance in mm, closed behind. */
  Region inside(double inwards) {
    double[] values = moved(inwards);
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < ridge.size(); i++) {
      ring.add(ridge.station(i, values[i]));
    }
    return Outline.of(ring).toRegion();
  }

  /** The smallest distance in mm of the border from a margin beside standing teeth. */
  double clearance(Region body) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ridge.size(); i++) {
      double arc = ridge.arc(i);
      if (reaches.stream().anyMatch(r -> r.holds(arc))) {
        continue;
      }
      Point p = ridge.station(i, border[i]);
      double near = Double.POSITIVE_INFINITY;
      for (Point q : necks) {
        near = Math.min(near, p.distanceTo(q));
      }
      // The body's border is this one only where the body reaches it.
      if (near < least && body.distanceTo(p) <= 1) {
        least = near;
      }
    }
    return least;
  }

  private double[] moved(double inwards) {
    if (inwards == 0) {
      return border;
    }
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < ridge.size(); i++) {
      line.add(ridge.station(i, border[i]));
    }
    double[] out = ridge.clearOf(line, inwards, true);
    return Fairing.mean(Fairing.above(out, 3), 2);
  }

  private void enter(Ground ground, Saddle saddle, SaddleReach reach, double[] raw) {
    // Between two teeth close together the way in is narrower than the clearance would leave it.
    double half = Math.max(1, (reach.length() - LEAST_NECK) / 2);
    for (int i = 0; i < raw.length; i++) {
      double arc = ridge.arc(i);
      if (!reach.holds(arc)) {
        continue;
      }
      double inner =
          Math.max(
              1,
              Math.min(
                  SaddlePlacement.lingualBorder(ground, saddle, arc) - INTO_SADDLE,
                  ridge.lingualMargin(arc) + 0.4));
      double way = Double.POSITIVE_INFINITY;
      if (reach.first() == SaddleReach.Stop.ABUTMENT) {
        way = Math.min(way, arc - reach.from());
      }
      if (reach.last() == SaddleReach.Stop.ABUTMENT) {
        way = Math.min(way, reach.to() - arc);
      }
      // A border without any clearance still needs a length to turn in, or it turns nowhere.
      double turn = Math.max(ridge.step(), Math.min(clearance, half));
      double lane = Math.max(raw[i], inner);
      raw[i] = inner + (lane - inner) * (1 - Fairing.step(way / turn));
    }
  }

  private double[] softened(double[] raw) {
    return Fairing.above(raw, 1);
  }
}
