package saddlewright.geometry;

/** A position in the plane, in millimetres. */
public record Point(double x, double y) {
  public static final Point ORIGIN = new Point(0, 0);

  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point needs finite coordinates, not " + x + ", " + y);
    }
  }

  public static Point of(double x, double y) {
    return new Point(x, y);
  }

  public Point plus(Vector v) {
    return new Point(x + v.x(), y + v.y());
  }

  public Point minus(Vector v) {
    return new Point(x - v.x(), y - v.y());
  }

  /** The vector that leads from this point to the other. */
  public Vector to(Point other) {
    return new Vector(other.x - x, other.y - y);
  }

  /** Distance in millimetres. */
  public double distanceTo(Point other) {
    // Not hypot: the millimetres of a mouth cannot overflow, and this is called very often.
    double dx = other.x - x;
    double dy = other.y - y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The point that lies the given share of the way to the other (0 here, 1 there). */
  public Point towards(Point other, double share) {
    return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
  }

  public Point midpoint(Point other) {
    return towards(other, 0.5);
  }
}
