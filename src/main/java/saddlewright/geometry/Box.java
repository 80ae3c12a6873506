package saddlewright.geometry;

import java.util.Collection;

/** An upright rectangle, in millimetres. */
public record Box(double minX, double minY, double maxX, double maxY) {
  public Box {
    if (!(minX <= maxX) || !(minY <= maxY)) {
      throw new IllegalArgumentException("a box needs min <= max");
    }
  }

  /** The smallest box that holds all the points; at least one is needed. */
  public static Box around(Collection<Point> points) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = x0;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = x1;
    for (Point p : points) {
      x0 = Math.min(x0, p.x());
      y0 = Math.min(y0, p.y());
      x1 = Math.max(x1, p.x());
      y1 = Math.max(y1, p.y());
    }
    return new Box(x0, y0, x1, y1);
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Box union(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  public Box grown(double by) {
    return new Box(minX - by, minY - by, maxX + by, maxY + by);
  }

  public boolean contains(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /** Smallest distance in mm between the two rectangles, zero when they touch. */
  public double distanceTo(Box o) {
    double dx = Math.max(0, Math.max(o.minX - maxX, minX - o.maxX));
    double dy = Math.max(0, Math.max(o.minY - maxY, minY - o.maxY));
    return Math.hypot(dx, dy);
  }

  public boolean overlaps(Box o) {
    return minX <= o.maxX && o.minX <= maxX && minY <= o.maxY && o.minY <= maxY;
  }
}
