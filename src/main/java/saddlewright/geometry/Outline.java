package saddlewright.geometry;

import java.util.ArrayList;
import java.util.List;

/** A closed curve without holes, sampled as a polygon, in millimetres. */
public final class Outline {
  private final List<Point> points;

  private Outline(List<Point> points) {
    if (points.size() < 3) {
      throw new IllegalArgumentException("an outline needs at least three points");
    }
    this.points = List.copyOf(points);
  }

  public static Outline of(List<Point> points) {
    return new Outline(points);
  }

  /** A smooth closed curve through the knots. */
  public static Outline smooth(List<Point> knots) {
    return new Outline(Spline.closed(knots));
  }

  /** An ellipse with half axes along x and y turned by an angle in radians. */
  public static Outline ellipse(Point centre, double halfX, double halfY, double turn) {
    List<Point> out = new ArrayList<>();
    int n = 48;
    for (int i = 0; i < n; i++) {
      double t = 2 * Math.PI * i / n;
      out.add(centre.plus(new Vector(halfX * Math.cos(t), halfY * Math.sin(t)).turned(turn)));
    }
    return new Outline(out);
  }

  public List<Point> points() {
    return points;
  }

  /** The curve as a path that ends where it began. */
  public Path toPath() {
    List<Point> out = new ArrayList<>(points);
    out.add(points.get(0));
    return Path.through(out);
  }

  public Region toRegion() {
    return Region.of(this);
  }

  public double area() {
    return Math.abs(signedArea());
  }

  /** Positive when the points turn from x towards y. */
  public double signedArea() {
    double s = 0;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      s += a.x() * b.y() - b.x() * a.y();
    }
    return s / 2;
  }

  public Point centroid() {
    double s = 0;
    double cx = 0;
    double cy = 0;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      double w = a.x() * b.y() - b.x() * a.y();
      s += w;
      cx += (a.x() + b.x()) * w;
      cy += (a.y() + b.y()) * w;
    }
    return s == 0 ? points.get(0) : new Point(cx / (3 * s), cy / (3 * s));
  }

  public boolean contains(Point p) {
    boolean in = false;
    for (int i = 0, j = points.size() - 1; i < points.size(); j = i++) {
      Point a = points.get(i);
      Point b = points.get(j);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }

  public Outline transformed(Transform t) {
    return new Outline(points.stream().map(t::apply).toList());
  }

  public Box box() {
    return Box.around(points);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Outline p && p.points.equals(points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "Outline" + points;
  }
}
