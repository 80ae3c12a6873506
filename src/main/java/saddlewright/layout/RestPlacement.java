package saddlewright.layout;

import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.design.Rest;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** Lays out rests: a spoon at the marginal ridge, a crescent on the cingulum, a notch on the edge. */
final class RestPlacement {
  /** Share of the buccolingual depth taken by a seat on a molar (University notes, T14; read). */
  private static final double MOLAR_SHARE = 1.0 / 3;
  /** The same on a premolar (T14; read). */
  private static final double PREMOLAR_SHARE = 1.0 / 2;
  /** Least width of the base of an occlusal seat, mm (Stratton and Wiebelt, T14; read). */
  private static final double LEAST_BASE = 2.5;
  /** Mesiodistal and labiolingual size of a cingulum seat, mm (McCracken's notes, T19; read). */
  private static final double CINGULUM_LENGTH = 2.8;
  private static final double CINGULUM_DEPTH = 2.0;
  /** Width of an incisal notch, mm (T20; read). */
  private static final double NOTCH_WIDTH = 2.5;
  /** How far a rest laps over its marginal ridge to meet the strut or plate there, mm. */
  private static final double LAP = 0.55;

  private RestPlacement() {}

  static Laid lay(Rest rest, PlacedTooth tooth) {
    return switch (rest.site()) {
      case MESIAL_OCCLUSAL, DISTAL_OCCLUSAL -> occlusal(rest, tooth, rest.site().end().get());
      case CINGULUM -> cingulum(rest, tooth);
      case MESIAL_INCISAL, DISTAL_INCISAL -> incisal(rest, tooth, rest.site().end().get());
    };
  }

  private static Laid occlusal(Rest rest, PlacedTooth tooth, End end) {
    double depth = 2 * tooth.halfDepth();
    double share = rest.tooth().isMolar() ? MOLAR_SHARE : PREMOLAR_SHARE;
    double width = Math.min(depth * 0.55, Math.max(LEAST_BASE, share * depth));
    double length =
        switch (rest.form()) {
          case STANDARD, EMBRASURE -> Math.min(width, tooth.halfWidth() * 0.95);
          case EXTENDED -> tooth.halfWidth() * 1.25;
          case DOUBLE -> 2 * tooth.halfWidth();
        };
    double lap = rest.form() == Rest.Form.EMBRASURE ? LAP + 0.25 : LAP;
    Frame f = new Frame(tooth.contact(end), tooth.direction(PlacedTooth.degrees(end)).negated(), tooth.buccal());
    double h = width / 2;
    List<Point> knots =
        rest.form() == Rest.Form.DOUBLE
            ? List.of(
                f.at(-lap, -0.75 * h),
                f.at(-lap, 0.75 * h),
                f.at(0.5, h),
                f.at(length * 0.3, 0.55 * h),
                f.at(length * 0.7, 0.55 * h),
                f.at(length - 0.5, h),
                f.at(length + lap, 0.75 * h),
                f.at(length + lap, -0.75 * h),
                f.at(length - 0.5, -h),
                f.at(length * 0.7, -0.55 * h),
                f.at(length * 0.3, -0.55 * h),
                f.at(0.5, -h))
            : List.of(
                f.at(-lap, -0.75 * h),
                f.at(-lap, 0.75 * h),
                f.at(0.45, h),
                f.at(length * 0.62, 0.68 * h),
                f.at(length * 0.93, 0.3 * h),
                f.at(length * 0.93, -0.3 * h),
                f.at(length * 0.62, -0.68 * h),
                f.at(0.45, -h));
    return Laid.of(rest, Substance.CAST_METAL, Outline.smooth(knots).toRegion())
        .withDetails(List.of(Path.of(f.at(0.2, 0), f.at(length * 0.8, 0))))
        .with(Measure.WIDTH, width)
        .with(Measure.LENGTH, length);
  }

  private static Laid cingulum(Rest rest, PlacedTooth tooth) {
    Frame f = new Frame(tooth.rim(270), tooth.buccal(), tooth.mesial());
    double h = Math.min(CINGULUM_LENGTH / 2, tooth.halfWidth() * 0.62);
    double d = Math.min(CINGULUM_DEPTH, tooth.halfDepth() * 0.95);
    List<Point> knots =
        List.of(
            f.at(-0.35, 0),
            f.at(-0.1, 0.6 * h),
            f.at(0.55, h),
            f.at(d * 0.62, 0.82 * h),
            f.at(d, 0),
            f.at(d * 0.62, -0.82 * h),
            f.at(0.55, -h),
            f.at(-0.1, -0.6 * h));
    return Laid.of(rest, Substance.CAST_METAL, Outline.smooth(knots).toRegion())
        .withDetails(
            List.of(
                Path.smooth(
                    List.of(f.at(0.45, 0.7 * h), f.at(d * 0.7, 0), f.at(0.45, -0.7 * h)))))
        .with(Measure.WIDTH, d)
        .with(Measure.LENGTH, 2 * h);
  }

  private static Laid incisal(Rest rest, PlacedTooth tooth, End end) {
    double sign = end == End.MESIAL ? 1 : -1;
    double m = sign * Math.max(0.3, 1 - 2.2 / tooth.halfWidth() / 2 - 0.1);
    Vector inward = tooth.buccal();
    Point edge = tooth.at(m, 0.15);
    Frame f = new Frame(edge, inward, tooth.mesial());
    double h = Math.min(NOTCH_WIDTH / 2, tooth.halfWidth() * 0.4);
    double back = edge.distanceTo(tooth.rim(sign > 0 ? 300 : 240)) * 0.95;
    List<Point> knots =
        List.of(
            f.at(-back, -0.7 * h),
            f.at(-back * 0.4, -0.9 * h),
            f.at(0.5, -h),
            f.at(0.9, 0),
            f.at(0.5, h),
            f.at(-back * 0.4, 0.9 * h),
            f.at(-back, 0.7 * h));
    return Laid.of(rest, Substance.CAST_METAL, Outline.smooth(knots).toRegion())
        .with(Measure.WIDTH, 2 * h)
        .with(Measure.LENGTH, back + 0.9);
  }

  /** A local frame: along leads into the crown, across is at a right angle to it. */
  private record Frame(Point origin, Vector along, Vector across) {
    Point at(double s, double b) {
      return origin.plus(along.times(s)).plus(across.times(b));
    }
  }
}
