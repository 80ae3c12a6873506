package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.Undercut;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * Lays out occlusally approaching retentive arms: round the crown at a constant small distance to a
 * tip in its zone.
 *
 * <p>The centreline begins where the arm hugs the crown; the shoulder before it belongs to the body
 * only, since it does not spring.
 */
final class OcclusalArm {
  /** Distance of the centreline outside the crown, mm: half the thickness of a cast arm. */
  static final double OFFSET = 0.5;

  /** Width in plan of a cast arm at its root, mm (a gauge-18 pattern is about 1.4; from memory). */
  static final double CAST_ROOT = 1.4;

  /** Width of a cast arm at its tip, mm: it tapers by nearly half. */
  static final double CAST_TIP = 0.8;

  /** Diameter of wrought wire, mm (UK practice 0.8–1.0). */
  static final double WIRE = 0.9;

  static final double POLYMER_ROOT = 1.7;
  static final double POLYMER_TIP = 1.2;

  /** How far past the middle of its zone a tip ends, degrees of sweep. */
  private static final double PAST = 11;

  /** Sweep at which an arm that must come back to its own end turns, at least, degrees. */
  private static final double HAIRPIN_TURN = 112;

  private static final double HAIRPIN_INNER = 0.28;
  private static final double HAIRPIN_OUTER = 0.75;
  private static final double HAIRPIN_WIDTH = 0.4;

  private final Ground ground;
  private final Clasp clasp;
  private final CrownContour crown;

  OcclusalArm(Ground ground, Clasp clasp) {
    this.ground = ground;
    this.clasp = clasp;
    this.crown = CrownContour.of(ground.tooth(clasp.tooth()));
  }

  Laid lay() {
    return switch (clasp.form()) {
      case RING, BACK_ACTION -> roundTheFarEnd();
      default -> overOneFace();
    };
  }

  private Laid overOneFace() {
    Sweep sweep = new Sweep(clasp.origin(), clasp.tip().face());
    Shoulder shoulder = Shoulder.of(ground, crown, sweep);
    double tip = sweep.to(clasp.tip());
    if (tip < shoulder.begins() + 30) {
      return hairpin(sweep, shoulder, tip);
    }
    List<Point> arm = arm(sweep, shoulder.begins(), tip + PAST);
    Path whole =
        clasp.form() == ClaspForm.EMBRASURE ? shoulder.overEmbrasure(arm) : shoulder.into(arm);
    return laid(whole, Path.smooth(arm), tip + PAST);
  }

  private Laid roundTheFarEnd() {
    Sweep sweep = new Sweep(clasp.origin(), clasp.tip().face().opposite());
    Shoulder shoulder = Shoulder.of(ground, crown, sweep);
    double tip = sweep.to(clasp.tip()) + PAST;
    List<Point> arm = arm(sweep, shoulder.begins(), tip);
    Path whole =
        clasp.form() == ClaspForm.BACK_ACTION ? shoulder.fromStrut(arm) : shoulder.into(arm);
    return laid(whole, Path.smooth(arm), tip);
  }

  private List<Point> arm(Sweep sweep, double from, double to) {
    return crown.knots(sweep.degrees(from), sweep.degrees(to), OFFSET, OFFSET);
  }

  /** Out along the crown, round, and back below itself to a tip at the end it came from. */
  private Laid hairpin(Sweep sweep, Shoulder shoulder, double tip) {
    double turn = HAIRPIN_TURN;
    List<Point> arm =
        new ArrayList<>(
            crown.knots(
                sweep.degrees(shoulder.begins()),
                sweep.degrees(turn - 5),
                HAIRPIN_INNER,
                HAIRPIN_INNER));
    arm.add(crown.at(sweep.degrees(turn), (HAIRPIN_INNER + HAIRPIN_OUTER) / 2));
    arm.addAll(
        crown.knots(
            sweep.degrees(turn - 5), sweep.degrees(tip - PAST), HAIRPIN_OUTER, HAIRPIN_OUTER));
    Path line = Path.smooth(arm);
    Region body = Region.band(shoulder.into(arm), HAIRPIN_WIDTH);
    return measured(body, line, turn);
  }

  private Laid laid(Path whole, Path line, double sweep) {
    double root = width(CAST_ROOT, POLYMER_ROOT);
    double tip = width(CAST_TIP, POLYMER_TIP);
    return measured(ArmShape.along(whole, root, tip), line, sweep);
  }

  private double width(double cast, double polymer) {
    ClaspMaterial m = clasp.material();
    return m.isWrought() ? WIRE : m.isCast() ? cast : polymer;
  }

  private Laid measured(Region body, Path line, double sweep) {
    double plan = line.length();
    Laid laid =
        Laid.of(clasp, substance(clasp.material()), body)
            .withCentreline(line)
            .withTip(line.end())
            .with(Measure.PLAN_LENGTH, plan)
            .with(
                Measure.ARM_LENGTH,
                new ArmHeight(ground, clasp.tooth()).retentive(plan, clasp.tip()))
            .with(Measure.TRAVEL, new ArmHeight(ground, clasp.tooth()).travel(clasp.tip()))
            .with(Measure.ENCIRCLEMENT_DEGREES, sweep);
    return withUndercut(ground, clasp, laid);
  }

  static Laid withUndercut(Ground ground, Clasp clasp, Laid laid) {
    Undercut found = ground.chart().tooth(clasp.tooth()).undercuts().get(clasp.tip());
    return found == null ? laid : laid.with(Measure.UNDERCUT, found.depth());
  }

  static Substance substance(ClaspMaterial material) {
    return material.isWrought()
        ? Substance.WIRE
        : material.isCast() ? Substance.CAST_METAL : Substance.POLYMER;
  }
}
