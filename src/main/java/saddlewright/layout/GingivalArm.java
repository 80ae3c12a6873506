package saddlewright.layout;

import java.util.ArrayList;
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
 * Lays out gingivally approaching arms: out of the saddle, along below the gingival margin, up across
 * it at a right angle, and a foot flat on the crown.
 *
 * <p>As is usual on design sheets the mucosa is laid out flat, so that distance outside the margin in
 * plan stands for depth below it. Only the rise of the tip above the margin is not seen from above; its
 * length in space is the plan length plus that rise.
 */
final class GingivalArm {
  /** Depth of the centreline below the margin where it runs along, mm: 3 clear and half its width. */
  static final double RUN_DEPTH = 4;
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
    Path rising = rising(foot, margin.at(arc), out, home);
    return laid(rising, upright, tip, run);
  }

  /** Sweep to the upright: at the tip, or before a foot that reaches sideways to it. */
  private double upright(double tip) {
    if (reach() == 0) {
      return tip;
    }
    // The foot of an end zone comes from the middle of the face; that of the middle from the origin.
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

  /** From the root along below the margin, round the corner and up to the foot. */
  private Path rising(Point foot, Point crossing, Vector out, Vector home) {
    Point corner = foot.plus(out.times(foot.to(crossing).dot(out) + RUN_DEPTH));
    Point before = corner.plus(home.times(TURN));
    Point after = corner.minus(out.times(TURN));
    Point root = root(before);
    double far = root.distanceTo(before) / 3;
    Path along =
        Path.cubic(
            root,
            root.plus(root.to(before).unit().times(far)),
            before.plus(home.times(far)),
            before);
    Path bend =
        Path.cubic(before, before.towards(corner, 0.6), after.towards(corner, 0.6), after);
    return along.then(bend).then(Path.of(after, foot));
  }

  /** Where the arm begins: over the next place, drawn in to a saddle or connector near by. */
  private Point root(Point before) {
    Vector home = towardsOrigin();
    Optional<PlacedTooth> next = Beside.place(ground, tooth.tooth(), clasp.origin());
    PlacedTooth over = next.orElse(tooth);
    if (next.isPresent()) {
      End far = over.tooth().endTowards(tooth.tooth()).opposite();
      home = far == End.MESIAL ? over.mesial() : over.mesial().negated();
    }
    double along =
        next.isPresent() ? begins(over) - over.halfWidth() : over.halfWidth() + BEGINS;
    double depth = outwards * (over.halfDepth() + RUN_DEPTH);
    Point free =
        over.centre().plus(home.times(along)).plus(over.buccal().times(depth));
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
        .findFirst()
        .or(() -> ground.connector().map(Laid::body).filter(b -> !b.isEmpty()));
  }

  private Laid laid(Path rising, double upright, double tip, Vector run) {
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
    double clear = clearance(rising) - (ROOT_WIDTH + UPRIGHT_WIDTH) / 4;
    Vector up = rising.tangentAt(rising.length() - 0.5);
    double plan = line.length();
    Laid laid =
        Laid.of(clasp, OcclusalArm.substance(clasp.material()), Region.union(parts))
            .withCentreline(line)
            .withTip(line.end())
            .with(Measure.PLAN_LENGTH, plan)
            .with(
                Measure.ARM_LENGTH,
                plan + new ArmHeight(ground, clasp.tooth()).tip(clasp.tip()))
            .with(Measure.MARGIN_CLEARANCE, clear)
            .with(
                Measure.CROSSING_DEGREES,
                Math.toDegrees(Math.asin(Math.min(1, Math.abs(up.cross(run))))));
    return OcclusalArm.withUndercut(ground, clasp, laid);
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
            a,
            a.plus(rising.tangentAt(rising.length()).times(0.9)),
            b.minus(along.times(0.6)),
            b);
    return rising.between(0, cut).then(curve).then(crown.path(start, to, FOOT_OFFSET));
  }

  /** Smallest distance from the margin to the centreline where it runs along below it, mm. */
  private double clearance(Path rising) {
    double least = Double.POSITIVE_INFINITY;
    double end = runLength(rising);
    for (double arc = 0; arc <= end; arc += 0.6) {
      least = Math.min(least, margin.distanceTo(rising.at(arc)));
    }
    return least;
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
}
