package saddlewright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.archform.ArchForm;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * The widths and borders of an upper connector, read off the shape that is drawn, in mm.
 *
 * @param frontBorder depth at which its front border crosses the midline
 * @param rearBorder depth at which its rear border crosses the midline
 * @param anterior front-to-back width of the first metal on the midline
 * @param opening front-to-back size of the opening behind that; empty without metal behind it
 * @param posterior front-to-back width of the metal behind the opening
 * @param lateral least width of the limbs beside an opening; empty without one
 * @param beforeSoftPalate how far in front of the soft palate the rear border crosses the midline;
 *     negative behind it
 * @param skewDegrees how far the last border on the midline leans from a right angle to it
 * @param rugae share of the length of the palatal rugae that the connector covers, 0 to 1
 */
public record PalatalLimbs(
    double frontBorder,
    double rearBorder,
    double anterior,
    OptionalDouble opening,
    OptionalDouble posterior,
    OptionalDouble lateral,
    double beforeSoftPalate,
    double skewDegrees,
    double rugae) {

  private static final double STEP = 1;

  /** The rounded corners at the ends of an opening are left out of the limbs beside it, mm. */
  private static final double CORNER = 4;

  /** Half the breadth over which the lean of the border is read, mm. */
  private static final double READ_OVER = 5;

  /** Reads a connector that crosses the midline; empty shapes and one-sided ones have no limbs. */
  static Optional<PalatalLimbs> of(ArchForm form, Region body) {
    if (body.isEmpty()) {
      return Optional.empty();
    }
    List<Outline> rings = body.boundaries();
    double[] onMidline = crossings(rings, 0, true);
    if (onMidline.length < 2) {
      return Optional.empty();
    }
    double front = onMidline[0];
    double rear = onMidline[onMidline.length - 1];
    boolean closed = onMidline.length >= 4;
    double openFrom = onMidline[1];
    double openTo = closed ? onMidline[2] : body.box().maxY();
    Path limit = form.palateLimit();
    double soft = limit.nearest(new Point(0, limit.at(limit.length() / 2).y())).y();
    return Optional.of(
        new PalatalLimbs(
            front,
            rear,
            openFrom - front,
            closed ? OptionalDouble.of(openTo - openFrom) : OptionalDouble.empty(),
            closed ? OptionalDouble.of(rear - openTo) : OptionalDouble.empty(),
            lateral(rings, openFrom + CORNER, openTo - CORNER),
            soft - rear,
            skew(rings, rear),
            rugae(form, body)));
  }

  private static double skew(List<Outline> rings, double rear) {
    double[] right = crossings(rings, -READ_OVER, true);
    double[] left = crossings(rings, READ_OVER, true);
    if (right.length == 0 || left.length == 0) {
      return 0;
    }
    double rise = nearest(left, rear) - nearest(right, rear);
    return Math.toDegrees(Math.atan(Math.abs(rise) / (2 * READ_OVER)));
  }

  private static double nearest(double[] values, double to) {
    double best = values[0];
    for (double v : values) {
      best = Math.abs(v - to) < Math.abs(best - to) ? v : best;
    }
    return best;
  }

  /**
   * The least distance from the inner to the outer border of the limbs on either side, between two
   * depths.
   */
  private static OptionalDouble lateral(List<Outline> rings, double from, double to) {
    List<Point> innerRight = new ArrayList<>();
    List<Point> innerLeft = new ArrayList<>();
    List<Point> outerRight = new ArrayList<>();
    List<Point> outerLeft = new ArrayList<>();
    for (double y = from; y <= to; y += STEP) {
      double[] xs = crossings(rings, y, false);
      if (xs.length >= 4) {
        outerRight.add(new Point(xs[0], y));
        innerRight.add(new Point(xs[1], y));
        innerLeft.add(new Point(xs[xs.length - 2], y));
        outerLeft.add(new Point(xs[xs.length - 1], y));
      }
    }
    if (innerRight.size() < 2) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Math.min(apart(innerRight, outerRight), apart(innerLeft, outerLeft)));
  }

  private static double apart(List<Point> inner, List<Point> outer) {
    Path border = Path.through(outer);
    return inner.stream().mapToDouble(border::distanceTo).min().orElse(0);
  }

  /** Where the boundaries cross the line x = at (or y = at), sorted. */
  private static double[] crossings(List<Outline> rings, double at, boolean upright) {
    double[] out = new double[16];
    int n = 0;
    for (Outline ring : rings) {
      List<Point> ps = ring.points();
      for (int i = 0, j = ps.size() - 1; i < ps.size(); j = i++) {
        Point a = ps.get(j);
        Point b = ps.get(i);
        double ua = upright ? a.x() : a.y();
        double ub = upright ? b.x() : b.y();
        if (ua > at != ub > at) {
          double va = upright ? a.y() : a.x();
          double vb = upright ? b.y() : b.x();
          if (n == out.length) {
            out = Arrays.copyOf(out, 2 * n);
          }
          out[n++] = va + (vb - va) * (at - ua) / (ub - ua);
        }
      }
    }
    double[] found = Arrays.copyOf(out, n);
    Arrays.sort(found);
    return found;
  }

  private static double rugae(ArchForm form, Region body) {
    int all = 0;
    int under = 0;
    for (Path ruga : form.rugae()) {
      for (Point p : ruga.sampled(STEP)) {
        all++;
        under += body.contains(p) ? 1 : 0;
      }
    }
    return all == 0 ? 0 : (double) under / all;
  }
}
