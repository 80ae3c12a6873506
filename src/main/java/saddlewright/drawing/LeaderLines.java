package saddlewright.drawing;

import saddlewright.geometry.Point;

/** How two straight leader lines lie to each other. */
final class LeaderLines {
  private LeaderLines() {}

  /** Whether the lines a–b and c–d cross. */
  static boolean cross(Point a, Point b, Point c, Point d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Point a, Point b, Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  /** Distance of a point from the line a–b, mm. */
  static double distance(Point a, Point b, Point p) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double length = dx * dx + dy * dy;
    double t = length == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length;
    t = Math.max(0, Math.min(1, t));
    double ex = a.x() + t * dx - p.x();
    double ey = a.y() + t * dy - p.y();
    return Math.sqrt(ex * ex + ey * ey);
  }
}
