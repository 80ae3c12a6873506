package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.Undercut;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/**
 * Lays out arms that come from below: they leave the saddle or connector, run along the margin at a
 * distance, turn, and cross it at a right angle.
 *
 * <p>In plan, distance from the crown stands for depth below the margin (common practice of drawing).
 * The length is that of the centreline so drawn.
 */
final class GingivalArm {
  /** Clear distance of the arm from the margin, mm; 3 is asked for (Eliason; Stratton; T10; read). */
  private static final double CLEAR = 3.2;
  private static final double ROOT_WIDTH = 1.7;
  private static final double TIP_WIDTH = 1.0;
  /** Radius of the bend where it turns to the tooth, mm. */
  private static final double BEND = 2.4;
  /** Contact of the foot on the crown, mm along the face (T13; read). */
  private static final double FOOT = 2.0;

  private GingivalArm() {}

  static Laid lay(Clasp clasp, Ground ground) {
    PlacedTooth tooth = ground.tooth(clasp.tooth());
    double zone = PlacedTooth.degrees(clasp.tip());
    Face face = clasp.tip().face();
    double towardsOrigin = OcclusalArm.risesAlong(face, clasp.origin()) ? -1 : 1;
    double stemAt =
        switch (clasp.form()) {
          case L_BAR -> zone + towardsOrigin * 16;
          default -> zone;
        };
    Path stem = stem(clasp, ground, tooth, stemAt, face);
    List<Region> parts = new ArrayList<>();
    parts.add(stem.ribbon(ROOT_WIDTH, TIP_WIDTH).toRegion());
    Path foot = foot(clasp, tooth, zone, stemAt, towardsOrigin);
    parts.add(foot.ribbon(1.0, 0.9).toRegion());
    Point tip = clasp.form().name().startsWith("I") ? stem.end() : footTip(clasp, foot);
    Path margin = face == Face.BUCCAL ? ground.form().buccalMargin() : ground.form().lingualMargin();
    Laid laid =
        Laid.of(clasp, OcclusalArm.substance(clasp), Region.union(parts))
            .withCentreline(stem)
            .withTip(tip)
            .withDetails(List.of(foot))
            .with(Measure.PLAN_LENGTH, stem.length())
            .with(Measure.ARM_LENGTH, stem.length())
            .with(Measure.MARGIN_CLEARANCE, clearance(stem, margin))
            .with(Measure.CROSSING_DEGREES, crossing(stem, margin));
    Undercut u = ground.chart().tooth(clasp.tooth()).undercuts().get(clasp.tip());
    return u == null ? laid : laid.with(Measure.UNDERCUT, u.depth());
  }

  /** From the saddle along the margin, round the bend, to the crown. */
  private static Path stem(
      Clasp clasp, Ground ground, PlacedTooth tooth, double degrees, Face face) {
    double out = CLEAR + ROOT_WIDTH / 2 + 0.35;
    Point tip = tooth.rimOut(degrees, -0.45);
    Point corner = tooth.rimOut(degrees, out);
    Vector up = corner.to(tip).unit();
    Point start = start(clasp, ground, tooth, corner, face, out);
    Vector along = corner.to(start).unit();
    double bend = Math.min(BEND, 0.45 * Math.min(corner.distanceTo(start), corner.distanceTo(tip)));
    Point before = corner.plus(along.times(bend));
    Point after = corner.plus(up.times(bend));
    Path turn =
        Path.cubic(
            before,
            before.towards(corner, 0.56),
            after.towards(corner, 0.56),
            after);
    return Path.of(start, before).then(turn).then(Path.of(after, tip));
  }

  /** Well inside the neighbouring place on the side from which the arm comes. */
  private static Point start(
      Clasp clasp, Ground ground, PlacedTooth tooth, Point corner, Face face, double out) {
    Optional<Tooth> next = clasp.tooth().neighbour(clasp.origin());
    while (next.isPresent() && ground.tooth(next.get()).isClosed()) {
      next = next.get().neighbour(clasp.origin());
    }
    if (next.isEmpty()) {
      double sign = clasp.origin() == End.MESIAL ? 1 : -1;
      return corner.plus(tooth.mesial().times(sign * 9));
    }
    PlacedTooth n = ground.tooth(next.get());
    Point beside = n.rimOut(PlacedTooth.degrees(face), out - 0.6);
    // A long way over a wide molar space adds nothing: the arm leaves the flange earlier.
    double far = corner.distanceTo(beside);
    return far > 11 ? corner.towards(beside, 11 / far) : beside;
  }

  private static Path foot(
      Clasp clasp, PlacedTooth tooth, double zone, double stemAt, double towardsOrigin) {
    double r = Math.max(1, tooth.centre().distanceTo(tooth.rim(zone)));
    double half = Math.toDegrees(FOOT / 2 / r);
    double inside = -0.15;
    return switch (clasp.form()) {
      case T_BAR -> tooth.rim(zone - 1.7 * half, zone + 1.7 * half, inside);
      case HALF_T -> tooth.rim(zone, zone - towardsOrigin * 2 * half, inside);
      case L_BAR -> tooth.rim(stemAt, zone - towardsOrigin * 6, inside);
      default -> tooth.rim(zone - 0.5 * half, zone + 0.5 * half, -0.25);
    };
  }

  private static Point footTip(Clasp clasp, Path foot) {
    return clasp.form() == saddlewright.design.ClaspForm.T_BAR
        ? foot.at(foot.length() / 2)
        : foot.end();
  }

  /** Smallest distance of the part that runs along the margin, edge to margin, mm. */
  private static double clearance(Path stem, Path margin) {
    double best = Double.POSITIVE_INFINITY;
    double run = Math.max(0.5, stem.length() - CLEAR - ROOT_WIDTH - BEND);
    for (Point p : stem.between(0, run).sampled(0.5)) {
      best = Math.min(best, margin.distanceTo(p));
    }
    return Math.max(0, best - ROOT_WIDTH / 2);
  }

  private static double crossing(Path stem, Path margin) {
    double at = 0;
    double best = Double.POSITIVE_INFINITY;
    for (double arc = stem.length() * 0.5; arc <= stem.length(); arc += 0.1) {
      double d = margin.distanceTo(stem.at(arc));
      if (d < best) {
        best = d;
        at = arc;
      }
    }
    Vector a = stem.tangentAt(at);
    Vector m = margin.tangentAt(margin.arcNearest(stem.at(at)));
    return Math.toDegrees(Math.acos(Math.min(1, Math.abs(a.dot(m)))));
  }
}
