package saddlewright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import saddlewright.archform.ArchForm;
import saddlewright.dentition.Side;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * Co-ordinates that follow an arch: how far along the ridge crest, and how far across it.
 *
 * <p>Positions along are arc lengths in mm of the crest, from behind the patient's right pad to
 * behind the left one. Distances across are in mm, positive inwards to tongue or palate, negative
 * outwards to cheek or lip. The inward lines all end on the midline and never meet before, so that
 * nothing laid in these co-ordinates can cross itself or reach the other side.
 */
final class RidgeFrame {
  /** Taken where a border of the ridge cannot be found across from its crest, mm. */
  private static final double UNKNOWN_ACROSS = 4;

  private static final double STEP = 0.8;

  /** The crest is carried on straight by this much, to lie behind every pad. */
  private static final double BEYOND = 12;

  /** Depth on the midline at which the inward lines of the front teeth meet, mm. */
  private static final double FOCUS = 17;

  /** Softness of the change from the fan of the front to the level lines of the sides, mm. */
  private static final double BLEND = 6;

  /** How far from there it is looked for, in steps. */
  private static final int NEAR = 40;

  private static final double CLEAR_OF_MIDLINE = 4;

  private final Path crest;
  private final double step;
  private final Point[] points;
  private final Vector[] inward;
  private final Vector[] outward;
  private final double[] toMidline;
  private final double[] lingualMargin;
  private final double[] buccalMargin;
  private final double[] sulcus;
  private final double[][] pads;

  /** The station nearest to the midline: not the middle one when a side has lost width to drift. */
  private final int middle;

  private RidgeFrame(ArchForm form) {
    crest = carriedOn(form.ridgeCrest());
    int n = (int) Math.ceil(crest.length() / STEP);
    step = crest.length() / n;
    points = new Point[n + 1];
    inward = new Vector[n + 1];
    outward = new Vector[n + 1];
    toMidline = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      points[i] = crest.at(i * step);
      inward[i] = inwardFrom(points[i]);
      outward[i] = outwardAt(i * step);
      toMidline[i] = points[i].distanceTo(meeting(points[i]));
    }
    middle = nearestToMidline();
    lingualMargin = across(form.lingualMargin(), true);
    buccalMargin = across(form.buccalMargin(), false);
    sulcus = across(form.buccalSulcus(), false);
    pads = new double[][] {padReach(form, Side.RIGHT), padReach(form, Side.LEFT)};
  }

  static RidgeFrame of(ArchForm form) {
    return new RidgeFrame(form);
  }

  /** The crest from right to left. */
  Path crest() {
    return crest;
  }

  double length() {
    return crest.length();
  }

  int size() {
    return points.length;
  }

  /** Distance between neighbouring stations in mm. */
  double step() {
    return step;
  }

  double arc(int station) {
    return station * step;
  }

  /** Arc length of the place on the crest nearest to the point. */
  double arcOf(Point p) {
    double best = Double.POSITIVE_INFINITY;
    double arc = 0;
    // Points well to one side are nearest to that half of the crest.
    int first = p.x() > CLEAR_OF_MIDLINE ? middle - 1 : 0;
    int last = p.x() < -CLEAR_OF_MIDLINE ? middle + 1 : points.length - 1;
    for (int i = first; i < last; i++) {
      double ax = points[i].x();
      double ay = points[i].y();
      double dx = points[i + 1].x() - ax;
      double dy = points[i + 1].y() - ay;
      double t = ((p.x() - ax) * dx + (p.y() - ay) * dy) / (dx * dx + dy * dy);
      t = t < 0 ? 0 : Math.min(t, 1);
      double ex = ax + t * dx - p.x();
      double ey = ay + t * dy - p.y();
      double d = ex * ex + ey * ey;
      if (d < best) {
        best = d;
        arc = (i + t) * step;
      }
    }
    return arc;
  }

  /**
   * Arc length at which the pad or tuberosity of a side has been covered by a share, from in front.
   */
  double pad(Side side, double share) {
    double lo = pads[side.ordinal()][0];
    double hi = pads[side.ordinal()][1];
    return side == Side.RIGHT ? hi - (hi - lo) * share : lo + (hi - lo) * share;
  }

  private double[] padReach(ArchForm form, Side side) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    List<Point> rim = form.pad(side).points();
    int stride = Math.max(1, rim.size() / 32);
    for (int i = 0; i < rim.size(); i += stride) {
      double arc = arcOf(rim.get(i));
      lo = Math.min(lo, arc);
      hi = Math.max(hi, arc);
    }
    return new double[] {lo, hi};
  }

  /** The point at a position along and a distance across. */
  Point at(double arc, double across) {
    Point p = crest.at(arc);
    return across >= 0
        ? p.plus(inwardFrom(p).times(across))
        : p.plus(outwardAt(arc).times(-across));
  }

  Point station(int i, double across) {
    return points[i].plus(across >= 0 ? inward[i].times(across) : outward[i].times(-across));
  }

  /**
   * Distance in mm from the crest inwards to the lingual margin or the inner border of the ridge.
   */
  double lingualMargin(double arc) {
    return read(lingualMargin, arc);
  }

  double buccalMargin(double arc) {
    return read(buccalMargin, arc);
  }

  /** Distance in mm from the crest outwards to the depth of the sulcus. */
  double sulcus(double arc) {
    return read(sulcus, arc);
  }

  /** The value at a position of a quantity known at the stations. */
  double read(double[] values, double arc) {
    double u = Math.max(0, Math.min(values.length - 1.0, arc / step));
    int i = Math.min(values.length - 2, (int) u);
    return values[i] + (values[i + 1] - values[i]) * (u - i);
  }

  /**
   * How far each station's line must run before it has left all discs of a radius about the points.
   *
   * @param inwards the inward lines, or else the outward ones
   * @return mm across, positive both ways; zero where no disc is met
   */
  double[] clearOf(List<Point> centres, double radius, boolean inwards) {
    double[] out = new double[points.length];
    double r2 = radius * radius;
    for (int i = 0; i < points.length; i++) {
      Vector d = inwards ? inward[i] : outward[i];
      double far = 0;
      for (Point q : centres) {
        double qx = q.x() - points[i].x();
        double qy = q.y() - points[i].y();
        double h = d.x() * qy - d.y() * qx;
        double rest = r2 - h * h;
        double along = d.x() * qx + d.y() * qy;
        if (rest > 0 && (!inwards || along < toMidline[i])) {
          far = Math.max(far, along + Math.sqrt(rest));
        }
      }
      out[i] = inwards ? Math.min(far, toMidline[i] - 0.5) : far;
    }
    return out;
  }

  /** The curve at the given distances across (mm at the stations), between two positions. */
  Path curve(double[] across, double from, double to) {
    List<Point> knots = new ArrayList<>();
    knots.add(at(from, read(across, from)));
    for (int i = 0; i < points.length; i++) {
      if (arc(i) > from + step / 2 && arc(i) < to - step / 2) {
        knots.add(station(i, across[i]));
      }
    }
    knots.add(at(to, read(across, to)));
    return Path.through(knots);
  }

  private static Vector inwardFrom(Point p) {
    return p.to(meeting(p)).unit();
  }

  /** Where the inward line from a point of the crest meets the midline. */
  private static Point meeting(Point p) {
    return new Point(0, FOCUS + BLEND * Math.log1p(Math.exp((p.y() - FOCUS) / BLEND)));
  }

  private Vector outwardAt(double arc) {
    // The crest runs from the viewer's left forwards and round, so its quarter turn leads inwards.
    return crest.at(Math.max(0, arc - 1.5)).to(crest.at(arc + 1.5)).unit().quarterTurn().negated();
  }

  private int nearestToMidline() {
    int best = 1;
    for (int i = 1; i + 1 < points.length; i++) {
      best = Math.abs(points[i].x()) < Math.abs(points[best].x()) ? i : best;
    }
    return best;
  }

  private static Path carriedOn(Path crest) {
    Point start = crest.start().minus(crest.tangentAt(0).times(BEYOND));
    Point end = crest.end().plus(crest.tangentAt(crest.length()).times(BEYOND));
    List<Point> all = new ArrayList<>();
    all.add(start);
    all.addAll(crest.points());
    all.add(end);
    return Path.through(all);
  }

  /** Where each station's line first meets a curve; where it meets none, the nearest value. */
  private double[] across(Path curve, boolean inwards) {
    List<Point> pts = curve.sampled(STEP);
    double[] out = new double[points.length];
    Arrays.fill(out, Double.NaN);
    for (int i = 0; i < points.length; i++) {
      Point p = points[i];
      Vector d = inwards ? inward[i] : outward[i];
      // Both curves run alongside, so that what a line meets lies at about the same share of each.
      int guess = i * (pts.size() - 1) / (points.length - 1);
      for (int k = Math.max(0, guess - NEAR); k < Math.min(pts.size() - 1, guess + NEAR); k++) {
        Point a = pts.get(k);
        Point b = pts.get(k + 1);
        double ca = d.x() * (a.y() - p.y()) - d.y() * (a.x() - p.x());
        double cb = d.x() * (b.y() - p.y()) - d.y() * (b.x() - p.x());
        if ((ca <= 0) != (cb <= 0)) {
          Vector to = p.to(a.towards(b, ca / (ca - cb)));
          double t = to.dot(d);
          if (t > 0 && t < toMidline[i] && !(t >= out[i])) {
            out[i] = t;
          }
        }
      }
    }
    return filled(out, middle);
  }

  private static double[] filled(double[] v, int middle) {
    int n = v.length;
    double[] out = v.clone();
    out[middle] = nearest(v, middle);
    for (int i = middle + 1; i < n; i++) {
      if (Double.isNaN(out[i])) {
        out[i] = out[i - 1];
      }
    }
    for (int i = middle - 1; i >= 0; i--) {
      if (Double.isNaN(out[i])) {
        out[i] = out[i + 1];
      }
    }
    return out;
  }

  /** The known value nearest to a station; half the breadth of a ridge where none is known. */
  private static double nearest(double[] v, int i) {
    for (int off = 0; off < v.length; off++) {
      for (int k : new int[] {i + off, i - off}) {
        if (k >= 0 && k < v.length && !Double.isNaN(v[k])) {
          return v[k];
        }
      }
    }
    return UNKNOWN_ACROSS;
  }
}
