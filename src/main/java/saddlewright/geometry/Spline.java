package saddlewright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Centripetal Catmull-Rom interpolation, sampled into points. */
final class Spline {
  private static final double STEP_MM = 0.25;

  private Spline() {}

  static List<Point> open(List<Point> knots) {
    if (knots.size() < 3) {
      return knots;
    }
    List<Point> out = new ArrayList<>();
    int n = knots.size();
    for (int i = 0; i + 1 < n; i++) {
      Point p1 = knots.get(i);
      Point p2 = knots.get(i + 1);
      Point p0 = i == 0 ? p1.plus(p2.to(p1)) : knots.get(i - 1);
      Point p3 = i + 2 == n ? p2.plus(p1.to(p2)) : knots.get(i + 2);
      piece(p0, p1, p2, p3, out);
    }
    out.add(knots.get(n - 1));
    return out;
  }

  static List<Point> closed(List<Point> knots) {
    List<Point> out = new ArrayList<>();
    int n = knots.size();
    for (int i = 0; i < n; i++) {
      piece(
          knots.get((i + n - 1) % n),
          knots.get(i),
          knots.get((i + 1) % n),
          knots.get((i + 2) % n),
          out);
    }
    return out;
  }

  /** Samples from p1 up to, but without, p2. */
  private static void piece(Point p0, Point p1, Point p2, Point p3, List<Point> out) {
    double t0 = 0;
    double t1 = t0 + knot(p0, p1);
    double t2 = t1 + knot(p1, p2);
    double t3 = t2 + knot(p2, p3);
    int steps = Math.max(2, (int) Math.ceil(p1.distanceTo(p2) / STEP_MM));
    for (int k = 0; k < steps; k++) {
      double t = t1 + (t2 - t1) * k / steps;
      Point a1 = mix(p0, p1, t0, t1, t);
      Point a2 = mix(p1, p2, t1, t2, t);
      Point a3 = mix(p2, p3, t2, t3, t);
      Point b1 = mix(a1, a2, t0, t2, t);
      Point b2 = mix(a2, a3, t1, t3, t);
      out.add(mix(b1, b2, t1, t2, t));
    }
  }

  private static double knot(Point a, Point b) {
    return Math.max(1e-6, Math.sqrt(a.distanceTo(b)));
  }

  private static Point mix(Point a, Point b, double ta, double tb, double t) {
    return a.towards(b, (t - ta) / (tb - ta));
  }
}
