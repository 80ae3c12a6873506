package saddlewright.archform;

import java.util.Map;
import saddlewright.dentition.Arch;
import saddlewright.dentition.DataTable;
import saddlewright.geometry.Point;

/**
 * The contact-line curve y = A x⁶ + B x² of an arch, y back from the incisal midpoint, in
 * millimetres.
 *
 * <p>Form after Noroozi et al., Angle Orthod 2001;71:386-9; coefficients in the arch-form table.
 */
public record ArchCurve(double a, double b) {
  private static final ArchCurve UPPER = read(Arch.UPPER);
  private static final ArchCurve LOWER = read(Arch.LOWER);

  public static ArchCurve mean(Arch arch) {
    return arch == Arch.UPPER ? UPPER : LOWER;
  }

  /** Depth y at a half width x, in mm. */
  public double depthAt(double x) {
    double x2 = x * x;
    return a * x2 * x2 * x2 + b * x2;
  }

  public Point at(double x) {
    return new Point(x, depthAt(x));
  }

  /** The point of the curve farther from the midline (x ≥ start) at a straight distance in mm. */
  public Point chordFrom(double startX, double distance) {
    Point from = at(startX);
    double lo = startX;
    double hi = startX + distance + 1e-9;
    for (int i = 0; i < 60; i++) {
      double mid = (lo + hi) / 2;
      if (from.distanceTo(at(mid)) < distance) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return at((lo + hi) / 2);
  }

  private static ArchCurve read(Arch arch) {
    double a = Double.NaN;
    double b = Double.NaN;
    for (Map<String, String> r : DataTable.rows("arch-form")) {
      if (r.get("item").equals("coefficient") && r.get("arch").equals(arch.code())) {
        double v = Double.parseDouble(r.get("value"));
        if (r.get("parameter").equals("A")) {
          a = v;
        } else {
          b = v;
        }
      }
    }
    return new ArchCurve(a, b);
  }
}
