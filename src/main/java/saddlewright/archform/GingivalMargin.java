package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The gingival margin along one face of an arch, from the patient's right to the left: scalloped
 * round standing crowns with a papilla between neighbours, and along the border of the ridge
 * elsewhere.
 */
final class GingivalMargin {
  /**
   * How far outside the greatest outline of a crown the margin is drawn, mm. The true margin lies
   * lower and, at the cervix, up to 0.5 mm inside that outline; the free gingiva is about 1 mm
   * thick (from memory), so that its crest is seen just outside the crown.
   */
  private static final double BESIDE_CROWN = 0.45;

  /** Share of the embrasure that the papilla leaves open towards the face. */
  private static final double PAPILLA = 0.50;

  /** Half breadth of a bare ridge as a share of the crown's half depth (from memory). */
  private static final double RIDGE = 0.72;

  private static final double STEP_OUT = 0.05;
  private static final int MOST_STEPS = 60;

  /** No two sampled points of the curve lie farther apart, mm. */
  private static final double LONGEST_STEP = 0.5;

  /** Longest loop that is cut off, in points of the sampled curve. */
  private static final int LONGEST_LOOP = 24;

  private static final double[] SCALLOP = {42, 22, 0, -22, -42};

  private final List<PlacedTooth> row;
  private final List<PlacedTooth> standing;
  private final Face face;
  private final ArchForm form;

  private GingivalMargin(ArchForm form, Face face) {
    this.form = form;
    this.row = form.teeth().stream().filter(t -> !t.isClosed()).toList();
    this.standing = row.stream().filter(this::stands).toList();
    this.face = face;
  }

  static Path of(ArchForm form, Face face) {
    return new GingivalMargin(form, face).path();
  }

  private Path path() {
    List<Point> knots = new ArrayList<>();
    if (row.isEmpty() || !stands(row.get(0))) {
      knots.add(beside(Side.RIGHT));
    }
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      if (i > 0 && stands(t) && stands(row.get(i - 1))) {
        knots.add(papilla(row.get(i - 1), t));
      }
      if (stands(t)) {
        scallop(t, knots);
      } else {
        ridge(t, knots);
      }
    }
    if (row.isEmpty() || !stands(row.get(row.size() - 1))) {
      knots.add(beside(Side.LEFT));
    }
    List<Point> free = new ArrayList<>(Path.smooth(uncovered(knots)).points());
    free.replaceAll(this::offTheCrowns);
    return Path.through(withoutLoops(free));
  }

  /** The points without the small loops that form in a narrow embrasure. */
  private static List<Point> withoutLoops(List<Point> points) {
    List<Point> out = new ArrayList<>();
    int i = 0;
    while (i < points.size()) {
      out.add(points.get(i));
      int next = i + 1;
      for (int k = Math.min(points.size() - 2, i + LONGEST_LOOP); k > i + 1; k--) {
        if (points.get(i).distanceTo(points.get(k)) < 2 * LONGEST_STEP
            && cross(points.get(i), points.get(i + 1), points.get(k), points.get(k + 1))) {
          next = k + 1;
          break;
        }
      }
      i = next;
    }
    return out;
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    Vector ab = a.to(b);
    Vector cd = c.to(d);
    return ab.cross(a.to(c)) * ab.cross(a.to(d)) <= 0 && cd.cross(c.to(a)) * cd.cross(c.to(b)) <= 0;
  }

  /** The knots without those that a broader neighbour's crown lies over. */
  private List<Point> uncovered(List<Point> knots) {
    List<Point> out = new ArrayList<>();
    for (Point p : knots) {
      if (standing.stream().noneMatch(t -> t.covers(p, 0))) {
        out.add(p);
      }
    }
    return out;
  }

  /** The point, or the nearest one straight outwards from it that no standing crown lies over. */
  private Point offTheCrowns(Point p) {
    Point now = p;
    for (PlacedTooth t : standing) {
      for (int i = 0; i < MOST_STEPS && t.covers(now, 0); i++) {
        now = now.plus(out(t).times(STEP_OUT));
      }
    }
    return now;
  }

  private boolean stands(PlacedTooth t) {
    return form.chart().stands(t.tooth());
  }

  private Vector out(PlacedTooth t) {
    return face == Face.BUCCAL ? t.outward() : t.outward().negated();
  }

  private void scallop(PlacedTooth t, List<Point> knots) {
    double across = t.degreesAcross(face);
    // Rising angles lead from mesial over buccal to distal, that is against the run on the right.
    boolean rising = (t.tooth().side() == Side.RIGHT) == (face == Face.LINGUAL);
    boolean first = t == row.get(0);
    boolean last = t == row.get(row.size() - 1);
    if (first) {
      round(t, across, rising ? -1 : 1, new double[] {88, 64}, knots);
    }
    round(t, across, rising ? -1 : 1, SCALLOP, knots);
    if (last) {
      round(t, across, rising ? 1 : -1, new double[] {64, 88}, knots);
    }
  }

  private static void round(
      PlacedTooth t, double across, int sense, double[] degrees, List<Point> knots) {
    for (double a : degrees) {
      knots.add(t.rimOut(across + sense * a, BESIDE_CROWN));
    }
  }

  private void ridge(PlacedTooth t, List<Point> knots) {
    boolean right = t.tooth().side() == Side.RIGHT;
    Vector along = t.mesial().times(0.45 * t.halfWidth());
    Point middle = t.centre().plus(out(t).times(RIDGE * t.halfDepth()));
    knots.add(right ? middle.minus(along) : middle.plus(along));
    knots.add(right ? middle.plus(along) : middle.minus(along));
  }

  private Point papilla(PlacedTooth right, PlacedTooth left) {
    Point contact = facing(right, left).midpoint(facing(left, right));
    Vector out = out(right).plus(out(left));
    double depth = Math.min(right.halfDepth(), left.halfDepth());
    double centreline =
        (out(right).dot(right.centre().to(contact)) + out(left).dot(left.centre().to(contact))) / 2;
    double reach = depth * (1 - PAPILLA) - centreline * PAPILLA;
    return contact.plus(out.unit().times(Math.max(0.3, reach)));
  }

  private static Point facing(PlacedTooth t, PlacedTooth other) {
    End end = t.tooth().endTowards(other.tooth());
    return t.contact(end);
  }

  /** The side of the pad on which a margin ends when nothing stands at the back. */
  private Point beside(Side side) {
    PlacedTooth eight = form.tooth(Tooth.at(form.arch(), side == Side.RIGHT ? 0 : 15));
    Point middle = form.pad(side).centroid();
    return middle.plus(out(eight).times(0.8 * Pads.HALF_BREADTH));
  }
}
