package saddlewright.geometry;

/** A displacement in the plane, in millimetres. */
public record Vector(double x, double y) {
  public Vector {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a vector needs finite components, not " + x + ", " + y);
    }
  }

  public static Vector of(double x, double y) {
    return new Vector(x, y);
  }

  /** The unit vector at an angle in radians, turning from x towards y. */
  public static Vector atAngle(double radians) {
    return new Vector(Math.cos(radians), Math.sin(radians));
  }

  public double length() {
    return Math.sqrt(x * x + y * y);
  }

  public Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y);
  }

  public Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y);
  }

  public Vector times(double factor) {
    return new Vector(x * factor, y * factor);
  }

  public Vector negated() {
    return new Vector(-x, -y);
  }

  public double dot(Vector other) {
    return x * other.x + y * other.y;
  }

  /** Signed area of the parallelogram: positive when the other lies from x towards y. */
  public double cross(Vector other) {
    return x * other.y - y * other.x;
  }

  /** The vector turned a quarter turn from x towards y. */
  public Vector quarterTurn() {
    return new Vector(-y, x);
  }

  public Vector turned(double radians) {
    double c = Math.cos(radians);
    double s = Math.sin(radians);
    return new Vector(x * c - y * s, x * s + y * c);
  }

  /** The same direction with length one; a null vector is refused. */
  public Vector unit() {
    double n = length();
    if (n == 0) {
      throw new IllegalArgumentException("a null vector has no direction");
    }
    return new Vector(x / n, y / n);
  }

  /** Angle in radians, from x towards y. */
  public double angle() {
    return Math.atan2(y, x);
  }
}
