package saddlewright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * An open curve, sampled as a polyline, in millimetres.
 *
 * <p>Positions along it are arc lengths in millimetres from its start.
 */
public final class Path {
  private final List<Point> points;
  private final double[] run;
  private final double[] xs;
  private final double[] ys;

  private Path(List<Point> points) {
    if (points.size() < 2) {
      throw new IllegalArgumentException("a path needs at least two points");
    }
    this.points = List.copyOf(points);
    int n = points.size();
    this.run = new double[n];
    this.xs = new double[n];
    this.ys = new double[n];
    for (int i = 0; i < n; i++) {
      xs[i] = points.get(i).x();
      ys[i] = points.get(i).y();
      if (i > 0) {
        double dx = xs[i] - xs[i - 1];
        double dy = ys[i] - ys[i - 1];
        run[i] = run[i - 1] + Math.sqrt(dx * dx + dy * dy);
      }
    }
  }

  /** The polyline through the points, with repeated neighbours dropped. */
  public static Path through(List<Point> points) {
    List<Point> clean = new ArrayList<>(points.size());
    for (Point p : points) {
      if (clean.isEmpty() || clean.get(clean.size() - 1).distanceTo(p) > 1e-9) {
        clean.add(p);
      }
    }
    if (clean.size() == 1) {
      clean.add(clean.get(0).plus(new Vector(1e-6, 0)));
    }
    return new Path(clean);
  }

  public static Path of(Point... points) {
    return through(List.of(points));
  }

  /**
   * A smooth curve through the points (centripetal Catmull-Rom), sampled so that no step is longer
   * than 0.25 mm.
   */
  public static Path smooth(List<Point> knots) {
    return through(Spline.open(knots));
  }

  /** A cubic Bézier curve, sampled in 24 steps. */
  public static Path cubic(Point start, Point c1, Point c2, Point end) {
    List<Point> out = new ArrayList<>();
    int n = 24;
    for (int i = 0; i <= n; i++) {
      double t = (double) i / n;
      double u = 1 - t;
      double w0 = u * u * u;
      double w1 = 3 * u * u * t;
      double w2 = 3 * u * t * t;
      double w3 = t * t * t;
      out.add(
          new Point(
              w0 * start.x() + w1 * c1.x() + w2 * c2.x() + w3 * end.x(),
              w0 * start.y() + w1 * c1.y() + w2 * c2.y() + w3 * end.y()));
    }
    return through(out);
  }

  public List<Point> points() {
    return points;
  }

  public Point start() {
    return points.get(0);
  }

  public Point end() {
    return points.get(points.size() - 1);
  }

  /** Length in millimetres. */
  public double length() {
    return run[run.length - 1];
  }

  /** The point at an arc length from the start; clamped to the ends. */
  public Point at(double arc) {
    if (arc <= 0) {
      return start();
    }
    if (arc >= length()) {
      return end();
    }
    int i = segmentAt(arc);
    double share = (arc - run[i]) / (run[i + 1] - run[i]);
    return points.get(i).towards(points.get(i + 1), share);
  }

  /** Unit tangent at an arc length, in the direction of travel. */
  public Vector tangentAt(double arc) {
    double h = Math.min(0.4, length() / 4);
    Point before = at(Math.max(0, arc - h));
    Point after = at(Math.min(length(), arc + h));
    return before.to(after).unit();
  }

  /** Arc length of the place on this path nearest to the point. */
  public double arcNearest(Point p) {
    double best = Double.POSITIVE_INFINITY;
    double arc = 0;
    // Bare numbers, since layout asks this thousands of times for one edit.
    for (int i = 0; i + 1 < xs.length; i++) {
      double dx = xs[i + 1] - xs[i];
      double dy = ys[i + 1] - ys[i];
      double px = p.x() - xs[i];
      double py = p.y() - ys[i];
      double len2 = dx * dx + dy * dy;
      double t = len2 == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / len2));
      double ex = px - t * dx;
      double ey = py - t * dy;
      double d2 = ex * ex + ey * ey;
      if (d2 < best) {
        best = d2;
        arc = run[i] + t * (run[i + 1] - run[i]);
      }
    }
    return arc;
  }

  public Point nearest(Point p) {
    return at(arcNearest(p));
  }

  public double distanceTo(Point p) {
    return nearest(p).distanceTo(p);
  }

  public Path reversed() {
    List<Point> r = new ArrayList<>(points);
    Collections.reverse(r);
    return new Path(r);
  }

  /** The piece between two arc lengths; when the first is the larger, the piece runs backwards. */
  public Path between(double from, double to) {
    if (from > to) {
      return between(to, from).reversed();
    }
    double lo = Math.max(0, from);
    double hi = Math.min(length(), Math.max(to, lo + 1e-6));
    List<Point> out = new ArrayList<>();
    out.add(at(lo));
    for (int i = 0; i < points.size(); i++) {
      if (run[i] > lo && run[i] < hi) {
        out.add(points.get(i));
      }
    }
    out.add(at(hi));
    return through(out);
  }

  /** This path followed by the other; a gap between them is bridged by a straight line. */
  public Path then(Path other) {
    List<Point> out = new ArrayList<>(points);
    out.addAll(other.points);
    return through(out);
  }

  public Path transformed(Transform t) {
    return new Path(points.stream().map(t::apply).toList());
  }

  /**
   * The parallel curve at a distance in millimetres, to the side of the quarter turn (from x
   * towards y) of the travel direction when positive. Points are moved along the local normal; use
   * it for gentle curves only.
   */
  public Path offset(double distance) {
    List<Point> out = new ArrayList<>(points.size());
    for (int i = 0; i < points.size(); i++) {
      Vector n = tangentAt(run[i]).quarterTurn();
      out.add(points.get(i).plus(n.times(distance)));
    }
    return through(out);
  }

  /** Points at equal steps no longer than the given length in millimetres, both ends included. */
  public List<Point> sampled(double step) {
    int n = Math.max(1, (int) Math.ceil(length() / step));
    List<Point> out = new ArrayList<>(n + 1);
    for (int i = 0; i <= n; i++) {
      out.add(at(length() * i / n));
    }
    return out;
  }

  /** The curve itself drawn with a pen whose width changes evenly from start to end (mm). */
  public Outline ribbon(double widthAtStart, double widthAtEnd) {
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    int steps = Math.max(1, (int) Math.ceil(length() / 0.3));
    for (int i = 0; i <= steps; i++) {
      double arc = length() * i / steps;
      Point p = at(arc);
      double half = (widthAtStart + (widthAtEnd - widthAtStart) * arc / length()) / 2;
      Vector n = tangentAt(arc).quarterTurn().times(half);
      left.add(p.plus(n));
      right.add(p.minus(n));
    }
    Collections.reverse(right);
    left.addAll(right);
    return Outline.of(left);
  }

  public Box box() {
    return Box.around(points);
  }

  private int segmentAt(double arc) {
    int lo = 0;
    int hi = run.length - 2;
    while (lo < hi) {
      int mid = (lo + hi + 1) >>> 1;
      if (run[mid] <= arc) {
        lo = mid;
      } else {
        hi = mid - 1;
      }
    }
    return lo;
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Path p && p.points.equals(points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "Path" + points;
  }
}
