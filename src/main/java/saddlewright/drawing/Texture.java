package saddlewright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * Hatching and stippling of areas, cut off at their boundaries.
 *
 * <p>All lines and dots lie on one lattice of the plane, so that neighbouring areas with the same
 * texture look like one.
 */
final class Texture {
  private Texture() {}

  /**
   * Parallel lines across a region.
   *
   * @param degrees of the lines from x towards y
   * @param pitch distance between them in mm
   */
  static List<Path> hatch(Region region, double degrees, double pitch) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    List<Path> out = new ArrayList<>();
    List<List<Double>> rows = new ArrayList<>();
    int first = rows(region, cos, sin, pitch, rows);
    for (int r = 0; r < rows.size(); r++) {
      double v = (first + r) * pitch;
      List<Double> cuts = rows.get(r);
      for (int k = 0; k + 1 < cuts.size(); k += 2) {
        double a = cuts.get(k);
        double b = cuts.get(k + 1);
        if (b - a > 0.15) {
          out.add(Path.of(back(a, v, cos, sin), back(b, v, cos, sin)));
        }
      }
    }
    return out;
  }

  /**
   * Dots on a hexagonal lattice, kept off the boundary.
   *
   * @param pitch distance between dots in mm
   */
  static List<Point> stipple(Region region, double pitch) {
    double rise = pitch * Math.sqrt(3) / 2;
    double keep = pitch / 3;
    List<Point> out = new ArrayList<>();
    List<List<Double>> rows = new ArrayList<>();
    int first = rows(region, 1, 0, rise, rows);
    for (int r = 0; r < rows.size(); r++) {
      double y = (first + r) * rise;
      double shift = Math.floorMod(first + r, 2) == 0 ? 0 : pitch / 2;
      List<Double> cuts = rows.get(r);
      for (int k = 0; k + 1 < cuts.size(); k += 2) {
        double from = cuts.get(k) + keep;
        double to = cuts.get(k + 1) - keep;
        for (double x = Math.ceil((from - shift) / pitch) * pitch + shift; x <= to; x += pitch) {
          out.add(new Point(x, y));
        }
      }
    }
    return out;
  }

  /**
   * Fills in where each row of the turned plane enters and leaves the region; the first row's
   * index.
   */
  private static int rows(
      Region region, double cos, double sin, double pitch, List<List<Double>> rows) {
    List<Outline> rings = region.boundaries();
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (Outline o : rings) {
      for (Point p : o.points()) {
        double v = p.y() * cos - p.x() * sin;
        lo = Math.min(lo, v);
        hi = Math.max(hi, v);
      }
    }
    if (rings.isEmpty()) {
      return 0;
    }
    int first = (int) Math.floor(lo / pitch);
    int last = (int) Math.ceil(hi / pitch);
    for (int r = first; r <= last; r++) {
      rows.add(new ArrayList<>());
    }
    for (Outline o : rings) {
      List<Point> pts = o.points();
      for (int i = 0, j = pts.size() - 1; i < pts.size(); j = i++) {
        cut(pts.get(j), pts.get(i), cos, sin, pitch, first, rows);
      }
    }
    rows.forEach(Collections::sort);
    return first;
  }

  private static void cut(
      Point a, Point b, double cos, double sin, double pitch, int first, List<List<Double>> rows) {
    double ua = a.x() * cos + a.y() * sin;
    double va = a.y() * cos - a.x() * sin;
    double ub = b.x() * cos + b.y() * sin;
    double vb = b.y() * cos - b.x() * sin;
    int from = (int) Math.ceil(Math.min(va, vb) / pitch);
    for (int r = from; r * pitch < Math.max(va, vb); r++) {
      double share = (r * pitch - va) / (vb - va);
      rows.get(r - first).add(ua + (ub - ua) * share);
    }
  }

  private static Point back(double u, double v, double cos, double sin) {
    return new Point(u * cos - v * sin, u * sin + v * cos);
  }
}
