package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * Lays out arms that come from above the survey line: they leave the rest or strut at one end of the
 * crown and hug it to the zone in which the tip ends.
 *
 * <p>The length is that of the plan path with its descent: from the junction of occlusal and middle
 * third at the shoulder to the middle of the gingival third at the tip, half the crown height (common
 * practice), as the hypotenuse of both.
 */
final class OcclusalArm {
  /** Centreline outside the crown, mm. */
  static final double OFFSET = 0.55;
  static final double ROOT_WIDTH = 1.45;
  static final double TIP_WIDTH = 0.75;
  static final double WIRE_WIDTH = 0.9;
  private static final double DESCENT_SHARE = 0.5;
  /** Degrees from the contact at which an arm leaves its rest. */
  private static final double SHOULDER = 9;
  /** Degrees by which a tip goes past the middle of its zone, where it does not turn back. */
  private static final double PAST = 8;

  private OcclusalArm() {}

  static Laid lay(Clasp clasp, Ground ground) {
    PlacedTooth tooth = ground.tooth(clasp.tooth());
    boolean round = clasp.form() == ClaspForm.RING || clasp.form() == ClaspForm.BACK_ACTION;
    double[] sweep = round ? roundSweep(clasp) : faceSweep(clasp);
    Path rim = tooth.rim(sweep[0], sweep[1], OFFSET);
    Path centre = clasp.form() == ClaspForm.EMBRASURE ? overRidge(clasp, tooth, sweep) : rim;
    boolean wire = clasp.material().isWrought();
    double root = wire ? WIRE_WIDTH : ROOT_WIDTH;
    double tip = wire ? WIRE_WIDTH : TIP_WIDTH;
    ToothFindings found = ground.chart().tooth(clasp.tooth());
    double drop =
        DESCENT_SHARE * found.crownHeight().orElse(CrownSize.mean(clasp.tooth()).height());
    Laid laid =
        Laid.of(clasp, substance(clasp), centre.ribbon(root, tip).toRegion())
            .withCentreline(centre)
            .withTip(centre.end())
            .with(Measure.PLAN_LENGTH, centre.length())
            .with(Measure.ARM_LENGTH, Math.hypot(centre.length(), drop))
            .with(Measure.ENCIRCLEMENT_DEGREES, Math.abs(sweep[1] - sweep[0]));
    Undercut u = found.undercuts().get(clasp.tip());
    return u == null ? laid : laid.with(Measure.UNDERCUT, u.depth());
  }

  static Substance substance(Clasp clasp) {
    if (clasp.material().isWrought()) {
      return Substance.WIRE;
    }
    return clasp.material().isCast() ? Substance.CAST_METAL : Substance.POLYMER;
  }

  /** From the origin along the face of the tip, as angles of the crown's frame. */
  private static double[] faceSweep(Clasp clasp) {
    double up = risesAlong(clasp.tip().face(), clasp.origin()) ? 1 : -1;
    double from = contactDegrees(clasp.origin(), clasp.tip().face()) + up * SHOULDER;
    double tip = PlacedTooth.degrees(clasp.tip());
    boolean far = clasp.tip().end().map(e -> e != clasp.origin()).orElse(false);
    return new double[] {from, tip + (far ? up * PAST : 0)};
  }

  /** From the origin along the other face and round the far end to the tip. */
  private static double[] roundSweep(Clasp clasp) {
    Face face = clasp.tip().face();
    double up = risesAlong(face.opposite(), clasp.origin()) ? 1 : -1;
    double start = clasp.form() == ClaspForm.BACK_ACTION ? 34 : SHOULDER;
    double from = contactDegrees(clasp.origin(), face.opposite()) + up * start;
    double tip = PlacedTooth.degrees(clasp.tip());
    while (up > 0 && tip < from + 120) {
      tip += 360;
    }
    while (up < 0 && tip > from - 120) {
      tip -= 360;
    }
    return new double[] {from, tip};
  }

  /** Whether degrees rise when one leaves this end along this face. */
  static boolean risesAlong(Face face, End from) {
    return (face == Face.BUCCAL) == (from == End.MESIAL);
  }

  /** The contact's direction, counted so that the way along the face needs no jump at 360. */
  static double contactDegrees(End end, Face along) {
    return end == End.DISTAL ? 180 : along == Face.BUCCAL ? 0 : 360;
  }

  /** Comes from the seat of its rest over the ridge before it runs along the face. */
  private static Path overRidge(Clasp clasp, PlacedTooth tooth, double[] sweep) {
    double up = Math.signum(sweep[1] - sweep[0]);
    double land = sweep[0] + up * 32;
    Path along = tooth.rim(land, sweep[1], OFFSET);
    Point seat = tooth.seat(RestSite.occlusal(clasp.origin()));
    List<Point> knots = new ArrayList<>();
    knots.add(seat);
    knots.add(seat.towards(along.start(), 0.6).plus(
        tooth.direction(PlacedTooth.degrees(clasp.origin())).times(0.5)));
    knots.addAll(along.sampled(0.8));
    return Path.smooth(knots);
  }
}
