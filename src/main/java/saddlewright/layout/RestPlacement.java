package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.design.GuidePlate;
import saddlewright.design.Rest;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/** Lays out rests in the proportions of their seats. */
final class RestPlacement {
  /** Width of an occlusal rest as a share of the buccolingual depth of a molar: a third. */
  static final double MOLAR_SHARE = 1.0 / 3;

  /** The same for a premolar: a half. */
  static final double PREMOLAR_SHARE = 1.0 / 2;

  /** Mesiodistal size of a cingulum rest, mm (2.5–3). */
  static final double CINGULUM_LENGTH = 2.75;

  /** Labiolingual size of a cingulum rest, mm. */
  static final double CINGULUM_WIDTH = 2;

  /** Mesiodistal size of an incisal notch, mm. */
  static final double NOTCH_LENGTH = 2.5;

  /** Reach from the ridge to the apex as a share of the mesiodistal width (from memory). */
  private static final double MOLAR_REACH = 0.34;

  private static final double PREMOLAR_REACH = 0.4;

  /** How far an extended rest goes past the centre, as a share of half the mesiodistal width. */
  private static final double PAST_CENTRE = 0.22;

  /** How far a rest reaches out over a free marginal ridge to meet metal beside it, mm. */
  private static final double OVER_RIDGE = 0.45;

  /** How far a cingulum rest reaches out over the lingual rim to meet metal there, mm. */
  private static final double OVER_CINGULUM = 0.25;

  private static final double LINGUAL = 270;
  private static final double LINK_WIDTH = 1.3;

  private final Ground ground;

  RestPlacement(Ground ground) {
    this.ground = ground;
  }

  Laid lay(Rest rest) {
    PlacedTooth tooth = ground.tooth(rest.tooth());
    return switch (rest.site()) {
      case MESIAL_OCCLUSAL -> occlusal(rest, tooth, End.MESIAL);
      case DISTAL_OCCLUSAL -> occlusal(rest, tooth, End.DISTAL);
      case CINGULUM -> cingulum(rest, tooth);
      case MESIAL_INCISAL -> incisal(rest, tooth, End.MESIAL);
      case DISTAL_INCISAL -> incisal(rest, tooth, End.DISTAL);
    };
  }

  private Laid occlusal(Rest rest, PlacedTooth t, End end) {
    CrownContour crown = CrownContour.of(t);
    boolean molar = t.tooth().isMolar();
    double width = (molar ? MOLAR_SHARE : PREMOLAR_SHARE) * 2 * t.halfDepth();
    double ridge = t.centre().distanceTo(crown.at(PlacedTooth.degrees(end), 0));
    double reach = (molar ? MOLAR_REACH : PREMOLAR_REACH) * 2 * t.halfWidth();
    Base base = new Base(crown, end, width, ridge);
    List<Point> knots =
        switch (rest.form()) {
          case STANDARD -> spoon(base, over(t, end), reach);
          case EXTENDED -> {
            reach = ridge + PAST_CENTRE * t.halfWidth();
            yield spoon(base, over(t, end), reach);
          }
          case DOUBLE -> {
            reach = 2 * t.halfWidth();
            Base far = new Base(crown, end.opposite(), width, 2 * t.halfWidth() - ridge);
            yield through(base, over(t, end), far, over(t, end.opposite()));
          }
          case EMBRASURE -> embrasure(base, reach);
        };
    return measured(rest, knots, reach, width);
  }

  private double over(PlacedTooth t, End end) {
    return Beside.stands(ground, t.tooth(), end) ? 0 : OVER_RIDGE;
  }

  /** Rounded triangle with its base on the marginal ridge and its apex towards the centre. */
  private static List<Point> spoon(Base base, double over, double reach) {
    List<Point> out = new ArrayList<>(base.across(over));
    double w = base.width;
    out.add(base.inside(0.42 * reach, 0.43 * w));
    out.add(base.inside(0.78 * reach, 0.27 * w));
    out.add(base.inside(reach, 0));
    out.add(base.inside(0.78 * reach, -0.27 * w));
    out.add(base.inside(0.42 * reach, -0.43 * w));
    return out;
  }

  /** From one marginal ridge through the fissure to the other. */
  private static List<Point> through(Base near, double overNear, Base far, double overFar) {
    List<Point> out = new ArrayList<>(near.across(overNear));
    double w = near.width;
    double middle = near.ridge;
    out.add(near.inside(0.34 * middle, 0.42 * w));
    out.add(near.inside(middle, 0.27 * w));
    out.add(far.inside(0.34 * far.ridge, 0.42 * w));
    List<Point> other = new ArrayList<>(far.across(overFar));
    Collections.reverse(other);
    out.addAll(other);
    out.add(far.inside(0.34 * far.ridge, -0.42 * w));
    out.add(near.inside(middle, -0.27 * w));
    out.add(near.inside(0.34 * middle, -0.42 * w));
    return out;
  }

  /** A spoon that runs on over the contact and widens into the lingual embrasure. */
  private static List<Point> embrasure(Base base, double reach) {
    List<Point> out = new ArrayList<>();
    double w = base.width;
    out.add(base.rim(-42, 0.4));
    out.add(base.rim(-22, 0.3));
    out.add(base.rim(0, 0.08));
    out.add(base.rim(22, 0.2));
    out.add(base.rim(27, -0.35));
    out.add(base.inside(0.5 * reach, 0.42 * w));
    out.add(base.inside(0.8 * reach, 0.25 * w));
    out.add(base.inside(reach, 0));
    out.add(base.inside(0.8 * reach, -0.27 * w));
    out.add(base.inside(0.5 * reach, -0.46 * w));
    out.add(base.rim(-42, -0.35));
    return out;
  }

  /**
   * A crescent on the cingulum, with its peak towards the incisal edge, down to the lingual rim.
   */
  private Laid cingulum(Rest rest, PlacedTooth t) {
    CrownContour crown = CrownContour.of(t);
    double half = Math.min(CINGULUM_LENGTH / 2, 0.6 * t.halfWidth());
    double peak = OVER_CINGULUM - Math.min(CINGULUM_WIDTH, 0.9 * t.halfDepth());
    double[][] shape = {
      {-half, 0.42 * peak},
      {-0.86 * half, 0.05},
      {-0.45 * half, OVER_CINGULUM},
      {0, OVER_CINGULUM},
      {0.45 * half, OVER_CINGULUM},
      {0.86 * half, 0.05},
      {half, 0.42 * peak},
      {0.62 * half, 0.84 * peak},
      {0, peak},
      {-0.62 * half, 0.84 * peak}
    };
    Vector in = crown.outward(LINGUAL).negated();
    Vector along = in.quarterTurn();
    List<Point> knots = new ArrayList<>();
    for (double[] p : shape) {
      Point rim = crown.at(crown.walked(LINGUAL, p[0]), Math.max(p[1], 0));
      // Inside, straight across from a line that flattens the curve of the rim.
      Point flat = crown.at(LINGUAL, 0).plus(along.times(p[0] * side(along, t)));
      knots.add(p[1] >= 0 ? rim : flat.plus(in.times(-p[1])));
    }
    Laid laid = measured(rest, knots, 2 * half, OVER_CINGULUM - peak);
    List<Region> parts = new ArrayList<>(List.of(laid.body()));
    ground.design().stream(GuidePlate.class)
        .filter(p -> p.tooth() == rest.tooth())
        .forEach(p -> parts.add(link(crown, p.end())));
    return parts.size() == 1 ? laid : laid.withBody(Region.union(parts));
  }

  /** The limb along the lingual rim by which a guide plate carries the rest. */
  private static Region link(CrownContour crown, End end) {
    double to = end == End.MESIAL ? 345 : 195;
    return ArmShape.along(crown.path(LINGUAL, to, -LINK_WIDTH / 4), LINK_WIDTH, LINK_WIDTH);
  }

  private static double side(Vector along, PlacedTooth t) {
    return along.dot(t.direction(0)) > 0 ? 1 : -1;
  }

  /** A notch over the incisal edge beside its corner, running down the lingual side. */
  private static Laid incisal(Rest rest, PlacedTooth t, End end) {
    double sign = end == End.MESIAL ? 1 : -1;
    double half = NOTCH_LENGTH / 2;
    double middle = Math.max(0.25 * t.halfWidth(), t.halfWidth() - half - 0.45);
    Point seat = t.at(sign * middle / t.halfWidth(), 0);
    double front = 0.3 * t.halfDepth();
    double back = -0.42 * t.halfDepth();
    double[][] shape = {
      {0.82 * half, front}, {-0.82 * half, front}, {-half, 0.5 * (front + back)},
      {-0.7 * half, back}, {0.7 * half, back}, {half, 0.5 * (front + back)}
    };
    for (double[] p : shape) {
      p[0] *= sign;
    }
    return measured(rest, inCrown(t, seat, shape), NOTCH_LENGTH, front - back);
  }

  /**
   * Points at mm towards mesial and buccal from the seat; the whole shape is moved towards the
   * middle of the crown, and at last made smaller, until it lies inside.
   */
  private static List<Point> inCrown(PlacedTooth t, Point seat, double[][] shape) {
    List<Point> out = placed(t, seat, shape, 1);
    for (int i = 1; i <= 12 && !inside(t, out); i++) {
      double share = Math.min(0.6, 0.1 * i);
      out = placed(t, seat.towards(t.centre(), share), shape, i <= 6 ? 1 : 1 - 0.1 * (i - 6));
    }
    return out;
  }

  private static List<Point> placed(PlacedTooth t, Point seat, double[][] shape, double scale) {
    List<Point> out = new ArrayList<>();
    for (double[] p : shape) {
      out.add(seat.plus(t.mesial().times(p[0] * scale)).plus(t.buccal().times(p[1] * scale)));
    }
    return out;
  }

  private static boolean inside(PlacedTooth t, List<Point> points) {
    return points.stream().allMatch(p -> t.outline().contains(t.centre().towards(p, 1.06)));
  }

  private static Laid measured(Rest rest, List<Point> knots, double length, double width) {
    return Laid.of(rest, Substance.CAST_METAL, Outline.smooth(knots).toRegion())
        .with(Measure.LENGTH, length)
        .with(Measure.WIDTH, width);
  }

  /**
   * The marginal ridge on which an occlusal rest has its base.
   *
   * @param width of the rest in mm
   * @param ridge distance of the ridge from the centre of the crown, mm
   */
  private record Base(CrownContour crown, End end, double width, double ridge) {

    /** Across the ridge from lingual to buccal, moved outwards by so much. */
    List<Point> across(double over) {
      double half = Math.toDegrees(Math.atan2(0.47 * width, ridge));
      return List.of(
          inside(0.16 * ridge, -0.5 * width),
          rim(-0.86 * half, over - 0.12),
          rim(0, over),
          rim(0.86 * half, over - 0.12),
          inside(0.16 * ridge, 0.5 * width));
    }

    /** So many degrees from the contact towards buccal, and mm outside the rim. */
    Point rim(double towardsBuccal, double offset) {
      double sign = end == End.MESIAL ? 1 : -1;
      return crown.at(PlacedTooth.degrees(end) + sign * towardsBuccal, offset);
    }

    /** So many mm in from the ridge, and mm towards buccal. */
    Point inside(double in, double buccal) {
      PlacedTooth t = crown.tooth();
      double sign = end == End.MESIAL ? 1 : -1;
      return t.centre().plus(t.mesial().times(sign * (ridge - in))).plus(t.buccal().times(buccal));
    }
  }
}
