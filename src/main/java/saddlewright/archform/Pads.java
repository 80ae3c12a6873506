package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * What ends the ridges at the back: pear-shaped retromolar pads (lower), tuberosities with the
 * hamular notches behind them (upper). Sizes from memory of casts.
 */
final class Pads {
  static final double HALF_BREADTH = 4.2;

  /** Gap between the last place and its pad, mm. */
  private static final double BEHIND = 0.6;

  /** Share of the width of a lost, unreplaced third molar by which its pad lies farther forward. */
  private static final double SHRUNK = 0.6;

  // Along: mm back from the pad's front; across: mm to either side.
  private static final double[][] PEAR = {
    {0, 0}, {0.9, 1.5}, {3, 2.4}, {5.6, 3.4}, {8, 4.1}, {10, 3.6}, {11.2, 1.8}, {11.5, 0}
  };
  private static final double[][] TUBEROSITY = {
    {0, 0}, {0.2, 2.4}, {1.5, 4.2}, {3.4, 4.7}, {5.3, 4.0}, {6.6, 2.2}, {6.9, 0}
  };
  private static final double NOTCH_BEHIND = 1.4;

  private Pads() {}

  static Outline pad(ArchForm form, Side side) {
    double[][] shape = shape(form);
    Frame f = frame(form, side);
    List<Point> knots = new ArrayList<>();
    for (double[] p : shape) {
      knots.add(f.at(p[0], p[1]));
    }
    for (int i = shape.length - 2; i > 0; i--) {
      knots.add(f.at(shape[i][0], -shape[i][1]));
    }
    return Outline.smooth(knots);
  }

  /** The hamular notch: the groove behind a tuberosity, from cheek to palate. */
  static Path hamularNotch(ArchForm form, Side side) {
    Frame f = frame(form, side);
    double back = TUBEROSITY[TUBEROSITY.length - 1][0] + NOTCH_BEHIND;
    return Path.smooth(
        List.of(
            f.at(back - 1.6, 3.4), f.at(back, 0.6), f.at(back - 0.2, -2.2), f.at(back - 2, -4)));
  }

  /** The farthest point of the pad or notch on the ridge line. */
  static Point end(ArchForm form, Side side) {
    double behind = form.arch() == Arch.LOWER ? 0 : NOTCH_BEHIND;
    return frame(form, side).at(length(form) + behind, 0);
  }

  /** A point beside the pad: mm back from its front, mm outwards. */
  static Point beside(ArchForm form, Side side, double back, double out) {
    return frame(form, side).at(back, out);
  }

  /** Length of the pad or tuberosity, mm. */
  static double length(ArchForm form) {
    double[][] shape = shape(form);
    return shape[shape.length - 1][0];
  }

  private static double[][] shape(ArchForm form) {
    return form.arch() == Arch.LOWER ? PEAR : TUBEROSITY;
  }

  private record Frame(Point front, Vector back, Vector out) {
    Point at(double along, double across) {
      return front.plus(back.times(along)).plus(out.times(across));
    }
  }

  private static Frame frame(ArchForm form, Side side) {
    Tooth last = Tooth.at(form.arch(), side == Side.RIGHT ? 0 : 15);
    PlacedTooth eight = form.tooth(last);
    Vector turned = eight.outward().quarterTurn();
    Vector back = side == Side.RIGHT ? turned.negated() : turned;
    double forward =
        form.chart().isLost(last) && !form.chart().isReplaced(last)
            ? 2 * SHRUNK * eight.halfWidth()
            : 0;
    Point front = eight.centre().plus(back.times(eight.halfWidth() + BEHIND - forward));
    return new Frame(front, back, eight.outward());
  }
}
