package saddlewright.geometry;

import java.util.List;

/** An affine map of the plane: x' = a x + c y + e, y' = b x + d y + f. */
public record Transform(double a, double b, double c, double d, double e, double f) {
  public static final Transform IDENTITY = new Transform(1, 0, 0, 1, 0, 0);

  /** Mirrors left and right (x becomes minus x). */
  public static final Transform MIRROR_X = new Transform(-1, 0, 0, 1, 0, 0);

  public static Transform translation(double dx, double dy) {
    return new Transform(1, 0, 0, 1, dx, dy);
  }

  public static Transform scaling(double sx, double sy) {
    return new Transform(sx, 0, 0, sy, 0, 0);
  }

  public static Transform rotation(double radians) {
    double cos = Math.cos(radians);
    double sin = Math.sin(radians);
    return new Transform(cos, sin, -sin, cos, 0, 0);
  }

  /** The map that does this one first and the other after it. */
  public Transform then(Transform o) {
    return new Transform(
        o.a * a + o.c * b,
        o.b * a + o.d * b,
        o.a * c + o.c * d,
        o.b * c + o.d * d,
        o.a * e + o.c * f + o.e,
        o.b * e + o.d * f + o.f);
  }

  public Point apply(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** Maps a displacement: the translation is left out. */
  /** The box of a box's corners. */
  public Box apply(Box b) {
    return Box.around(
        List.of(apply(new Point(b.minX(), b.minY())), apply(new Point(b.maxX(), b.maxY()))));
  }

  public Vector apply(Vector v) {
    return new Vector(a * v.x() + c * v.y(), b * v.x() + d * v.y());
  }

  public Transform inverse() {
    double det = a * d - b * c;
    if (det == 0) {
      throw new IllegalArgumentException("this transform flattens the plane and has no inverse");
    }
    return new Transform(
        d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
  }
}
