package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import saddlewright.archform.PlacedTooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The rim of a crown as a clasp arm sees it: distances from the centre in the directions of the
 * crown's own frame, with the grooves between cusps bridged.
 *
 * <p>Directions are degrees of the frame of {@link PlacedTooth}, offsets millimetres outwards.
 */
final class CrownContour {
  private static final int BINS = 72;
  private static final double STEP = 360.0 / BINS;
  private static final int PASSES = 6;

  /** How far a groove may be bridged, and a prominence cut, in mm. */
  private static final double BRIDGED = 0.2;

  private static final double CUT = 0.08;

  /** Longest turn between two knots of a curve along the rim, degrees. */
  private static final double KNOT = 9;

  /** Distances already found, for as long as their teeth are in use: one edit asks many times. */
  private static final Map<PlacedTooth, double[]> KNOWN = new WeakHashMap<>();

  private final PlacedTooth tooth;
  private final double[] radius;

  private CrownContour(PlacedTooth tooth, double[] radius) {
    this.tooth = tooth;
    this.radius = radius;
  }

  static CrownContour of(PlacedTooth tooth) {
    synchronized (KNOWN) {
      return new CrownContour(tooth, KNOWN.computeIfAbsent(tooth, t -> smoothed(radii(t))));
    }
  }

  PlacedTooth tooth() {
    return tooth;
  }

  /** The point in a direction, moved outwards along the normal of the rim. */
  Point at(double degrees, double offset) {
    double r = radius(degrees);
    double slope = (radius(degrees + 4) - radius(degrees - 4)) / Math.toRadians(8);
    Vector out = tooth.direction(degrees);
    Vector on = tooth.direction(degrees + 90);
    Vector normal = out.times(r).minus(on.times(slope)).unit();
    return tooth.centre().plus(out.times(r)).plus(normal.times(offset));
  }

  /** The run of the rim there, towards rising angles. */
  Vector along(double degrees) {
    return at(degrees - 4, 0).to(at(degrees + 4, 0)).unit();
  }

  /** The normal of the rim there, outwards. */
  Vector outward(double degrees) {
    return at(degrees, 0).to(at(degrees, 1));
  }

  /** The knots of a curve outside the rim whose offset changes evenly from start to end. */
  List<Point> knots(double from, double to, double offsetFrom, double offsetTo) {
    int n = Math.max(2, (int) Math.ceil(Math.abs(to - from) / KNOT));
    List<Point> out = new ArrayList<>(n + 1);
    for (int i = 0; i <= n; i++) {
      double share = (double) i / n;
      out.add(at(from + (to - from) * share, offsetFrom + (offsetTo - offsetFrom) * share));
    }
    return out;
  }

  Path path(double from, double to, double offset) {
    return Path.smooth(knots(from, to, offset, offset));
  }

  /** The direction reached by going a distance in mm along the rim; negative goes back. */
  double walked(double from, double mm) {
    double here = from;
    double left = Math.abs(mm);
    double turn = Math.signum(mm) * 2;
    Point p = at(here, 0);
    while (left > 0 && Math.abs(here - from) < 170) {
      Point q = at(here + turn, 0);
      double d = Math.max(1e-3, p.distanceTo(q));
      here += turn * Math.min(1, left / d);
      left -= d;
      p = q;
    }
    return here;
  }

  private double radius(double degrees) {
    double at = degrees / STEP;
    int low = (int) Math.floor(at);
    double share = at - low;
    int i = Math.floorMod(low, BINS);
    return radius[i] * (1 - share) + radius[(i + 1) % BINS] * share;
  }

  private static double[] radii(PlacedTooth t) {
    double[] r = new double[BINS];
    for (int i = 0; i < BINS; i++) {
      r[i] = Math.max(0.05, t.centre().distanceTo(t.rim(i * STEP)));
    }
    return r;
  }

  /** Evened out over a groove's width, but never far inside the crown. */
  private static double[] smoothed(double[] r) {
    double[] now = r;
    for (int pass = 0; pass < PASSES; pass++) {
      double[] next = new double[BINS];
      for (int i = 0; i < BINS; i++) {
        double near = (now[(i + BINS - 1) % BINS] + now[i] + now[(i + 1) % BINS]) / 3;
        next[i] = Math.min(r[i] + BRIDGED, Math.max(near, r[i] - CUT));
      }
      now = next;
    }
    return now;
  }
}
