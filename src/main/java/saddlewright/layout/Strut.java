package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.MinorConnector.Place;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/**
 * A strut from a tooth across its gingival margin, at a right angle to it, to larger metal or a
 * saddle.
 *
 * @param path from the tooth to the far end
 * @param crossing where it crosses the margin
 * @param degrees between it and the run of the margin there, 0 to 90; empty where larger metal
 *     covers the margin, so that the strut does not cross it
 */
record Strut(Path path, Point crossing, OptionalDouble degrees) {
  /** Width at the tooth, mm. */
  static final double WIDTH_AT_TOOTH = 1.8;

  /** Width where it leaves the connector, mm. */
  static final double WIDTH_AT_CONNECTOR = 3;

  /** How far the foot is sunk into the metal that carries it, mm. */
  private static final double SUNK = 1.2;

  /** Longest way for which a straight line to the target is looked for, mm. */
  private static final double REACH = 22;

  /** A straight strut is taken when it is no longer than this many times the shortest. */
  private static final double STRAIGHT = 1.5;

  /** Length of a strut that finds nothing to stand on, mm. */
  private static final double STUB = 3.5;

  /** The strut to a target; a stub when the target is empty. */
  static Strut to(Ground ground, Region target, Tooth tooth, Place place) {
    boolean outer =
        !target.isEmpty()
            && ground.connector().isPresent()
            && isOuter(ground, target, ground.tooth(tooth));
    return to(ground, target, tooth, place, outer ? Face.BUCCAL : Face.LINGUAL);
  }

  private static Strut to(Ground ground, Region target, Tooth tooth, Place place, Face face) {
    PlacedTooth t = ground.tooth(tooth);
    double sign = face == Face.LINGUAL ? -1 : 1;
    Path margin =
        face == Face.LINGUAL ? ground.form().lingualMargin() : ground.form().buccalMargin();
    Point top = top(t, place, sign);
    Point gap = gap(ground, t, place, sign);
    double arc = margin.arcNearest(gap);
    Point crossing = margin.at(arc);
    Vector run =
        margin.at(Math.max(0, arc - 3)).to(margin.at(Math.min(margin.length(), arc + 3))).unit();
    Vector down = run.quarterTurn();
    if (down.dot(t.buccal()) * sign < 0) {
      down = down.negated();
    }
    Path path = course(target, top, crossing, down);
    if (covers(target, crossing, down)) {
      return new Strut(path, crossing, OptionalDouble.empty());
    }
    Vector there = path.tangentAt(path.arcNearest(crossing));
    double degrees = Math.toDegrees(Math.asin(Math.min(1, Math.abs(there.cross(run)))));
    return new Strut(path, crossing, OptionalDouble.of(degrees));
  }

  /** Where a strut at this place crosses the lingual margin, whatever carries it. */
  static Point crossing(Ground ground, Tooth tooth, Place place) {
    Path margin = ground.form().lingualMargin();
    return margin.nearest(gap(ground, ground.tooth(tooth), place, -1));
  }

  /** The strut seen from above: tapering to a rounded end on the tooth. */
  Region body() {
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    double length = path.length();
    int steps = (int) Math.ceil(length / 0.35);
    for (int i = 0; i <= steps; i++) {
      double arc = length * i / steps;
      Point p = path.at(arc);
      double taper = WIDTH_AT_TOOTH + (WIDTH_AT_CONNECTOR - WIDTH_AT_TOOTH) * arc / length;
      double u = 1 - Math.min(1, (arc + 0.02) / (WIDTH_AT_TOOTH / 2));
      double half = taper / 2 * Math.sqrt(1 - u * u);
      Vector n = path.tangentAt(arc).quarterTurn().times(half);
      left.add(p.plus(n));
      right.add(p.minus(n));
    }
    Collections.reverse(right);
    left.addAll(right);
    return Outline.of(left).toRegion();
  }

  private static boolean isOuter(Ground ground, Region target, PlacedTooth t) {
    Point near = target.nearest(t.centre());
    return !target.contains(t.centre()) && t.centre().to(near).dot(t.buccal()) > t.halfDepth();
  }

  /** Where it lies on the crown: lapping the marginal ridge, or on the cingulum. */
  private static Point top(PlacedTooth t, Place place, double sign) {
    boolean front = t.tooth().isAnterior();
    return switch (place) {
      // On a front tooth it runs on to the cingulum, where the rest that it carries lies.
      case MESIAL_EMBRASURE ->
          front ? onCingulum(t, 0.8, sign) : onRidge(t, End.MESIAL, sign * 0.24);
      case DISTAL_EMBRASURE ->
          front ? onCingulum(t, -0.8, sign) : onRidge(t, End.DISTAL, sign * 0.24);
      case LINGUAL_FACE -> t.at(0, sign * (front ? 0.42 : 0.6));
    };
  }

  /** Within the end of a cingulum seat, the given distance in mm to the mesial of its middle. */
  private static Point onCingulum(PlacedTooth t, double mesially, double sign) {
    Point seat = sign < 0 ? t.seat(RestSite.CINGULUM) : t.at(0, 0.5);
    return seat.plus(t.mesial().times(mesially));
  }

  /** Within the rest seat, which lies behind the contact: that of an upper molar is well buccal. */
  private static Point onRidge(PlacedTooth t, End end, double lingually) {
    double inwards = end == End.MESIAL ? -0.26 : 0.26;
    return t.contact(end)
        .plus(t.mesial().times(inwards * t.halfWidth()))
        .plus(t.buccal().times(lingually * t.halfDepth()));
  }

  /** A point in the embrasure beside the crown, or outside the middle of its face. */
  private static Point gap(Ground ground, PlacedTooth t, Place place, double sign) {
    if (place == Place.LINGUAL_FACE) {
      return t.rim(sign < 0 ? 270 : 90);
    }
    End end = place == Place.MESIAL_EMBRASURE ? End.MESIAL : End.DISTAL;
    double own = end == End.MESIAL ? 1.0 : -1.0;
    Optional<PlacedTooth> beside =
        t.tooth().neighbour(end).filter(n -> ground.chart().stands(n)).map(ground::tooth);
    if (beside.isEmpty()) {
      return t.at(own * 0.86, sign);
    }
    PlacedTooth n = beside.get();
    double other = n.tooth().endTowards(t.tooth()) == End.MESIAL ? 1.0 : -1.0;
    return t.at(own * 0.98, sign).midpoint(n.at(other * 0.98, sign));
  }

  /** Whether the target itself lies on the tooth, so that the strut ends above the margin. */
  private static boolean covers(Region target, Point crossing, Vector down) {
    return target.contains(crossing) || target.distanceTo(crossing.minus(down.times(0.9))) < 0.6;
  }

  /** From the crown across the margin, straight on if metal lies there, or else with a bend. */
  private static Path course(Region target, Point top, Point crossing, Vector down) {
    Point above = crossing.minus(down.times(0.9));
    Point below = crossing.plus(down.times(1.5));
    if (target.isEmpty()) {
      return Path.smooth(List.of(top, above, crossing, below, crossing.plus(down.times(STUB))));
    }
    if (covers(target, crossing, down) && target.contains(crossing)) {
      // Metal on the teeth themselves: the strut need not reach beyond it.
      return Path.smooth(List.of(top, above, crossing, crossing.plus(down.times(0.9))));
    }
    if (covers(target, crossing, down)) {
      Point near = target.nearest(above);
      return Path.of(top, top.distanceTo(near) < 0.4 ? above : near.plus(top.to(near).unit()));
    }
    Point nearest = target.nearest(below);
    double least = nearest.distanceTo(below);
    Path ray = Path.of(crossing, crossing.plus(down.times(REACH)));
    Optional<Path> hit =
        target.inside(ray).stream()
            .min(Comparator.comparingDouble(h -> h.start().distanceTo(crossing)));
    if (hit.isPresent() && hit.get().start().distanceTo(below) < STRAIGHT * least + 1.5) {
      double way = hit.get().start().distanceTo(crossing) + Math.min(SUNK, hit.get().length());
      Point foot = crossing.plus(down.times(Math.max(2.2, way)));
      return Path.smooth(List.of(top, above, crossing, below, foot));
    }
    if (least < 0.2) {
      return Path.smooth(List.of(top, above, crossing, below, crossing.plus(down.times(2.4))));
    }
    Vector way = below.to(nearest).unit();
    return Path.smooth(List.of(top, above, crossing, below, nearest.plus(way.times(SUNK))));
  }
}
