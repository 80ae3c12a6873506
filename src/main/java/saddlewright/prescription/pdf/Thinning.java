package saddlewright.prescription.pdf;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** Leaves out points of a polyline that hardly bend it (Douglas and Peucker 1973). */
final class Thinning {
  private Thinning() {}

  /** The polyline with fewer points, nowhere farther from the given one than the tolerance. */
  static List<Point> of(List<Point> points, double tolerance) {
    if (points.size() < 3) {
      return points;
    }
    BitSet kept = new BitSet(points.size());
    kept.set(0);
    kept.set(points.size() - 1);
    keep(points, 0, points.size() - 1, tolerance, kept);
    List<Point> out = new ArrayList<>(kept.cardinality());
    for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
      out.add(points.get(i));
    }
    return out;
  }

  private static void keep(List<Point> points, int from, int to, double tolerance, BitSet kept) {
    int farthest = -1;
    double most = tolerance;
    for (int i = from + 1; i < to; i++) {
      double d = distance(points.get(i), points.get(from), points.get(to));
      if (d > most) {
        most = d;
        farthest = i;
      }
    }
    if (farthest > 0) {
      kept.set(farthest);
      keep(points, from, farthest, tolerance, kept);
      keep(points, farthest, to, tolerance, kept);
    }
  }

  private static double distance(Point p, Point a, Point b) {
    Vector ab = a.to(b);
    double length2 = ab.dot(ab);
    double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, a.to(p).dot(ab) / length2));
    return a.plus(ab.times(t)).distanceTo(p);
  }
}
