package saddlewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/**
 * Lays out gingivally approaching arms: out of the saddle, along below the gingival margin, up
 * across it at a right angle, and a foot flat on the crown.
 *
 * <p>As is usual on design sheets the mucosa is laid out flat, so that distance outside the margin
 * in plan stands for depth below it. Only the rise of the tip above the margin is not seen from
 * above; its length in space is the plan length plus that rise.
 */
final class GingivalArm {
  /**
   * Depth of the centreline below the margin where it runs along, mm: 3 clear and half its width.
   */
  static final double RUN_DEPTH = 4.1;

  /** Where the arm begins, mm along from the contact at its origin. */
  static final double BEGINS = 7;

  static final double ROOT_WIDTH = 1.5;
  static final double UPRIGHT_WIDTH = 1.05;

  /** Width in plan of a foot, mm, and how far its centreline lies outside the crown. */
  static final double FOOT_WIDTH = 0.8;

  static final double FOOT_OFFSET = 0.3;

  /** Contact of an I-bar, mm mesiodistally (2–3). */
  static final double I_CONTACT = 2;

  /** From the tip of a T to the middle of its upright, mm; half of its crossbar. */
  static final double T_HALF = 1.9;

  static final double HALF_T_REACH = 2.2;
  static final double L_REACH = 2.4;

  private static final double TURN = 2.1;

  /** Sweep of an upright beyond which the arm must first pass the middle of the face, degrees. */
  private static final double PAST_MIDDLE = 104;

  private static final double BESIDE_MIDDLE = 82;

  /** Clear of the margin, mm: 3 and a little for sampling. */
  private static final double CLEAR = 3.02;

  private static final double STEP_OUT = 0.45;
  private static final int TRIES = 5;

  /** Usual distance of the margin outside the crown, mm. */
  private static final double MARGIN_OFFSET = 0.4;

  /** Direction in which the run of the margin is judged, mm to each side. */
  private static final double CHORD = 3;

  /** Farthest saddle or connector that the root is brought to, mm. */
  private static final double SEEKS = 6;

  private final Ground ground;
  private final Clasp clasp;
  private final PlacedTooth tooth;
  private final CrownContour crown;
  private final Sweep sweep;
  private final Path margin;
  private final double outwards;

  GingivalArm(Ground ground, Clasp clasp) {
    this.ground = ground;
    this.clasp = clasp;
    this.tooth = ground.tooth(clasp.tooth());
    this.crown = CrownContour.of(tooth);
    Face face = clasp.tip().face();
    this.sweep = new Sweep(clasp.origin(), face);
    boolean buccal = face == Face.BUCCAL;
    this.margin = buccal ? ground.form().buccalMargin() : ground.form().lingualMargin();
    this.outwards = buccal ? 1 : -1;
  }

  Laid lay() {
    double tip = sweep.to(clasp.tip());
    double upright = upright(tip);
    double towardsTip = tip >= upright ? 1 : -1;
    double reach = reach();
    if (reach > 0) {
      tip = beyond(upright, towardsTip * reach);
    }
    Point foot = crown.at(sweep.degrees(upright), FOOT_OFFSET);
    double arc = margin.arcNearest(foot);
    Vector run =
        margin.at(Math.max(0, arc - CHORD)).to(margin.at(Math.min(margin.length(), arc + CHORD)));
    run = run.unit();
    Vector out = run.quarterTurn();
    out = out.dot(tooth.buccal()) * outwards < 0 ? out.negated() : out;
    Vector home = run.dot(towardsOrigin()) < 0 ? run.negated() : run;
    List<Point> necks = necks(arc);
    Stance at = new Stance(foot, margin.at(arc), out, home, upright);
    Path rising = rising(at, 0);
    double clear = clearance(rising, necks);
    // Crowns that bulge beyond the place of crossing bring their margins nearer: farther out, then.
    for (int i = 1; i <= TRIES && clear < CLEAR; i++) {
      rising = rising(at, i * STEP_OUT);
      clear = clearance(rising, necks);
    }
    return laid(rising, clear, upright, tip, run);
  }

  /** Sweep to the upright: at the tip, or before a foot that reaches sideways to it. */
  private double upright(double tip) {
    if (reach() == 0) {
      return tip;
    }
    // The foot of an end zone comes from the middle of the face; that of the middle from the
    // origin.
    double back = tip < 80 ? reach() : -reach();
    return Math.max(42, Math.min(138, beyond(tip, back)));
  }

  private double reach() {
    return switch (clasp.form()) {
      case T_BAR -> T_HALF;
      case HALF_T -> HALF_T_REACH;
      case L_BAR -> L_REACH;
      default -> 0;
    };
  }

  /** Sweep after going on along the crown by so many mm. */
  private double beyond(double from, double mm) {
    double degrees = crown.walked(sweep.degrees(from), sweep.sign() * mm);
    return sweep.sign() * (degrees - sweep.degrees(0));
  }

  private Vector towardsOrigin() {
    return clasp.origin() == End.MESIAL ? tooth.mesial() : tooth.mesial().negated();
  }

  /** Points of the margins beside which the arm runs along. */
  private List<Point> necks(double crossing) {
    double corner = margin.arcNearest(crown.at(sweep.degrees(25), 0));
    double way = Math.signum(corner - crossing);
    double end = Beside.stands(ground, tooth.tooth(), clasp.origin()) ? BEGINS : 0;
    return margin.between(crossing - way * TURN, corner + way * end).sampled(0.5);
  }

  /** From the root along below the margin, round the corner and up to the foot. */
  private Path rising(Stance at, double swell) {
    Vector out = at.out;
    double depth = at.foot.to(at.crossing).dot(out) + RUN_DEPTH;
    Point corner = at.foot.plus(out.times(depth + swell));
    Point before = corner.plus(at.home.times(TURN));
    Point after = corner.minus(out.times(TURN));
    Path bend = Path.cubic(before, before.towards(corner, 0.6), after.towards(corner, 0.6), after);
    return along(before, at, swell).then(bend).then(Path.of(after, at.foot));
  }

  /** From the root to the bend; on the way to the far end of the crown round its face. */
  private Path along(Point before, Stance at, double swell) {
    Vector home = at.home;
    Point root = root();
    if (at.upright < PAST_MIDDLE) {
      double far = root.distanceTo(before) / 3;
      return Path.cubic(
          root,
          root.plus(root.to(before).unit().times(far)).plus(at.out.times(1.5 * swell)),
          before.plus(home.times(far)),
          before);
    }
    Point middle = crown.at(sweep.degrees(BESIDE_MIDDLE), MARGIN_OFFSET + RUN_DEPTH + swell);
    Vector back = crown.along(sweep.degrees(BESIDE_MIDDLE)).times(-sweep.sign());
    double near = root.distanceTo(middle) / 3;
    Vector bulge = crown.outward(sweep.degrees(BESIDE_MIDDLE)).times(1.5 * swell);
    double far = middle.distanceTo(before) / 3;
    return Path.cubic(
            root,
            root.plus(root.to(middle).unit().times(near)).plus(bulge),
            middle.plus(back.times(near)),
            middle)
        .then(
            Path.cubic(
                middle, middle.minus(back.times(far)), before.plus(home.times(far)), before));
  }

  /** Where the arm begins: over the next place, drawn in to a saddle or connector near by. */
  private Point root() {
    Vector home = towardsOrigin();
    Optional<PlacedTooth> next = Beside.place(ground, tooth.tooth(), clasp.origin());
    PlacedTooth over = next.orElse(tooth);
    if (next.isPresent()) {
      End far = over.tooth().endTowards(tooth.tooth()).opposite();
      home = far == End.MESIAL ? over.mesial() : over.mesial().negated();
    }
    double along = next.isPresent() ? begins(over) - over.halfWidth() : over.halfWidth() + BEGINS;
    double depth = outwards * (over.halfDepth() + RUN_DEPTH);
    Point free = over.centre().plus(home.times(along)).plus(over.buccal().times(depth));
    return carrier()
        .filter(r -> !r.contains(free) && r.distanceTo(free) < SEEKS)
        .map(r -> inTo(r, free))
        .orElse(free);
  }

  /** Along from the contact; in a saddle of one tooth not past its middle. */
  private double begins(PlacedTooth over) {
    boolean bounded =
        Beside.place(ground, over.tooth(), over.tooth().endTowards(tooth.tooth()).opposite())
            .filter(p -> ground.chart().stands(p.tooth()))
            .isPresent();
    return bounded ? Math.min(BEGINS, 0.9 * over.halfWidth()) : BEGINS;
  }

  private Point inTo(Region metal, Point free) {
    Point edge = metal.nearest(free);
    return edge.plus(free.to(edge).unit().times(1.0));
  }

  /** What the arm comes out of: the saddle at its origin, or else the major connector. */
  private Optional<Region> carrier() {
    Point there = tooth.centre().plus(towardsOrigin().times(tooth.halfWidth() + BEGINS));
    return ground.saddles().stream()
        .map(Laid::body)
        .filter(b -> !b.isEmpty() && b.distanceTo(there) < SEEKS)
        .min(Comparator.comparingDouble(b -> b.distanceTo(there)))
        .or(() -> ground.connector().map(Laid::body).filter(b -> !b.isEmpty()));
  }

  private Laid laid(Path rising, double clear, double upright, double tip, Vector run) {
    List<Region> parts = new ArrayList<>();
    Path line = rising;
    double from = sweep.degrees(upright);
    double to = sweep.degrees(tip);
    if (clasp.form() == ClaspForm.L_BAR) {
      line = bentInto(rising, from, to);
      parts.add(ArmShape.along(line, ROOT_WIDTH, FOOT_WIDTH));
    } else {
      parts.add(ArmShape.along(rising, ROOT_WIDTH, UPRIGHT_WIDTH * 0.9));
      Path foot = foot(from, to);
      parts.add(ArmShape.along(foot, FOOT_WIDTH, FOOT_WIDTH));
      if (reach() > 0) {
        line = rising.then(crown.path(from, to, FOOT_OFFSET));
      }
    }
    Vector up = rising.tangentAt(rising.length() - 0.5);
    double plan = line.length();
    Laid laid =
        Laid.of(clasp, OcclusalArm.substance(clasp.material()), joined(parts))
            .withCentreline(line)
            .withTip(line.end())
            .with(Measure.PLAN_LENGTH, plan)
            .with(Measure.ARM_LENGTH, plan + new ArmHeight(ground, clasp.tooth()).tip(clasp.tip()))
            .with(Measure.TRAVEL, new ArmHeight(ground, clasp.tooth()).travel(clasp.tip()))
            .with(Measure.MARGIN_CLEARANCE, clear)
            .with(
                Measure.CROSSING_DEGREES,
                Math.toDegrees(Math.asin(Math.min(1, Math.abs(up.cross(run))))));
    return OcclusalArm.withUndercut(ground, clasp, laid);
  }

  private static Region joined(List<Region> parts) {
    return parts.size() == 1 ? parts.get(0) : parts.get(0).plus(parts.get(1));
  }

  /** The part that lies flat on the crown, without the upright. */
  private Path foot(double from, double to) {
    double forward = Math.signum(to - from);
    double end = FOOT_WIDTH / 2;
    return switch (clasp.form()) {
      case T_BAR -> crown.path(crown.walked(from, -forward * T_HALF), to, FOOT_OFFSET);
      case HALF_T -> crown.path(crown.walked(from, -forward * 0.15), to, FOOT_OFFSET);
      default ->
          crown.path(
              crown.walked(from, end - I_CONTACT / 2),
              crown.walked(from, I_CONTACT / 2 - end),
              FOOT_OFFSET);
    };
  }

  /** The rising line bent smoothly into a foot. */
  private Path bentInto(Path rising, double from, double to) {
    double bend = 1.5;
    double cut = Math.max(rising.length() - bend, rising.length() / 2);
    double start = from + (to - from) * 0.45;
    Point a = rising.at(cut);
    Point b = crown.at(start, FOOT_OFFSET);
    Vector along = crown.along(start).times(Math.signum(to - from));
    Path curve =
        Path.cubic(
            a, a.plus(rising.tangentAt(rising.length()).times(0.9)), b.minus(along.times(0.6)), b);
    return rising.between(0, cut).then(curve).then(crown.path(start, to, FOOT_OFFSET));
  }

  /**
   * Smallest distance from the margins of standing teeth to the arm where it passes them, mm. Where
   * it comes out of a saddle it must come near the abutment; that part counts for nothing.
   */
  private double clearance(Path rising, List<Point> necks) {
    boolean saddle = !Beside.stands(ground, tooth.tooth(), clasp.origin());
    Point contact = crown.at(sweep.degrees(0), 0);
    Vector home = towardsOrigin();
    double least = RUN_DEPTH;
    double end = runLength(rising);
    for (double back = 0; back <= end; back += 0.5) {
      Point p = rising.at(end - back);
      if (saddle && contact.to(p).dot(home) > 0) {
        break;
      }
      for (Point neck : necks) {
        least = Math.min(least, neck.distanceTo(p));
      }
    }
    return least - (ROOT_WIDTH + UPRIGHT_WIDTH) / 4;
  }

  /** Length of the part before the turn up to the tooth, mm. */
  private static double runLength(Path rising) {
    Vector up = rising.tangentAt(rising.length());
    double arc = rising.length();
    while (arc > 0.5 && Math.abs(rising.tangentAt(arc).dot(up)) > 0.5) {
      arc -= 0.5;
    }
    return arc;
  }

  /** Where the upright stands, its direction away from the tooth and the way back to the root. */
  private record Stance(Point foot, Point crossing, Vector out, Vector home, double upright) {}
}
