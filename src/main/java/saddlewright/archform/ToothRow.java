package saddlewright.archform;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The crowns of one side set up from the midline back, each touching the one before it.
 *
 * <p>A turned crown takes the room along the arch that its outline needs. A leaning crown is seen
 * foreshortened and moved the way it leans; where the place on that side is lost it moves into it,
 * and the lost place on its other side gains the room. All teeth behind move with it.
 */
final class ToothRow {
  /** Width in mm left to a place that drift has closed, so that it still has a frame. */
  private static final double CLOSED_WIDTH = 0.05;

  /** Movement of the crown for each degree of tilt, mm (assumption: turn about mid-root). */
  private static final double MM_PER_DEGREE = 0.1;

  private static final double GREATEST_SHIFT = 1.5;

  /** Tilt taken where a direction but no angle is charted, degrees (assumption). */
  private static final double USUAL_TILT = 15;

  /** Beyond this a crown is foreshortened no more, degrees: its side is seen instead. */
  private static final double GREATEST_FORESHORTENING = 35;

  /** Share of its width below which neighbours that lean do not squeeze a lost place. */
  private static final double LEAST_PLACE = 0.6;

  /** Overlap of crowns that is let be, mm, and the step by which crowns are moved apart. */
  private static final double MOST_OVERLAP = 0.08;

  private static final double STEP = 0.1;
  private static final int MOST_STEPS = 60;

  private static final int MIDLINE_TO_MOLAR = 8;

  private final ArchChart chart;
  private final Side side;
  private final double[] halfWidth = new double[9];
  private final double[] halfDepth = new double[9];
  private final double[] room = new double[9];

  private ToothRow(ArchChart chart, Side side) {
    this.chart = chart;
    this.side = side;
  }

  static Map<Tooth, PlacedTooth> of(ArchChart chart, Side side) {
    ToothRow row = new ToothRow(chart, side);
    row.measure();
    return row.placed();
  }

  private Tooth tooth(int position) {
    return Tooth.at(chart.arch(), side == Side.RIGHT ? 8 - position : 7 + position);
  }

  private void measure() {
    for (int n = 1; n <= MIDLINE_TO_MOLAR; n++) {
      Tooth t = tooth(n);
      ToothFindings f = chart.tooth(t);
      CrownSize size = CrownSize.mean(t);
      double seen = Math.cos(Math.toRadians(Math.min(GREATEST_FORESHORTENING, tiltDegrees(t))));
      boolean along = leans(t, Tilt.MESIAL) || leans(t, Tilt.DISTAL);
      double width = f.mesiodistal().orElse(size.width()) * (along ? seen : 1);
      double depth = f.buccolingual().orElse(size.depth()) * (along ? 1 : seen);
      halfWidth[n] = (chart.isClosed(t) ? CLOSED_WIDTH : width) / 2;
      halfDepth[n] = depth / 2;
    }
    for (int n = 1; n <= MIDLINE_TO_MOLAR; n++) {
      double move = shift(tooth(n));
      int into = leans(tooth(n), Tilt.MESIAL) ? n - 1 : n + 1;
      int behind = 2 * n - into;
      if ((leans(tooth(n), Tilt.MESIAL) || leans(tooth(n), Tilt.DISTAL)) && isOpen(into)) {
        room[into] -= move;
        if (isOpen(behind)) {
          room[behind] += move;
        }
      }
    }
    for (int n = 1; n <= MIDLINE_TO_MOLAR; n++) {
      halfWidth[n] = Math.max(LEAST_PLACE * halfWidth[n], halfWidth[n] + room[n] / 2);
    }
  }

  private boolean isOpen(int position) {
    return position >= 1
        && position <= MIDLINE_TO_MOLAR
        && chart.isLost(tooth(position))
        && !chart.isClosed(tooth(position));
  }

  private Map<Tooth, PlacedTooth> placed() {
    Map<Tooth, PlacedTooth> out = new EnumMap<>(Tooth.class);
    ArchCurve curve = ArchCurve.mean(chart.arch());
    Point from = curve.at(0);
    Optional<PlacedTooth> before = Optional.empty();
    for (int n = 1; n <= MIDLINE_TO_MOLAR; n++) {
      Tooth t = tooth(n);
      Point start = from;
      PlacedTooth placed = place(n, start, curve);
      // Broad crowns that have drifted to a tighter bend would meet at their inner corners.
      for (int i = 0; i < MOST_STEPS && mayCollide() && collides(placed, before); i++) {
        start = curve.chordFrom(start.x(), STEP);
        placed = place(n, start, curve);
      }
      out.put(t, placed);
      from = curve.chordFrom(start.x(), room(n));
      if (!placed.isClosed()) {
        before = Optional.of(placed);
      }
    }
    return out;
  }

  private boolean mayCollide() {
    return Tooth.in(chart.arch()).stream()
        .filter(t -> t.side() == side)
        .anyMatch(t -> chart.isClosed(t) || turn(t) != 0);
  }

  private boolean collides(PlacedTooth t, Optional<PlacedTooth> before) {
    if (t.isClosed()) {
      return false;
    }
    double sign = side == Side.RIGHT ? -1 : 1;
    return before
        .map(
            b ->
                t.outline().points().stream().anyMatch(p -> b.covers(p, -MOST_OVERLAP))
                    || b.outline().points().stream().anyMatch(p -> t.covers(p, -MOST_OVERLAP)))
        .orElseGet(() -> t.outline().points().stream().anyMatch(p -> sign * p.x() < -MOST_OVERLAP));
  }

  private double turn(Tooth t) {
    return chart.stands(t) ? Math.toRadians(chart.tooth(t).rotationDegrees().orElse(0.0)) : 0;
  }

  private Reach reach(int n) {
    Tooth t = tooth(n);
    return Reach.of(CrownShape.of(t.key()), halfWidth[n], halfDepth[n], turn(t));
  }

  private double room(int n) {
    Reach reach = reach(n);
    return reach.front + reach.back;
  }

  private PlacedTooth place(int n, Point from, ArchCurve curve) {
    Tooth t = tooth(n);
    double sign = side == Side.RIGHT ? -1 : 1;
    double turn = turn(t);
    Reach reach = reach(n);
    Point to = curve.chordFrom(from.x(), reach.front + reach.back);
    Vector mesial = to.to(from).unit();
    // Worked out on the viewer's right, then mirrored, so that both sides are exactly alike.
    Vector outward = mesial.quarterTurn();
    Point centre =
        from.minus(mesial.times(reach.front)).plus(outward.times(lean(t) - reach.contactHeight));
    Vector turned = mesial.times(Math.cos(turn)).minus(outward.times(Math.sin(turn)));
    return new PlacedTooth(
        t,
        new Point(sign * centre.x(), centre.y()),
        new Vector(sign * turned.x(), turned.y()),
        new Vector(sign * outward.x(), outward.y()),
        halfWidth[n],
        halfDepth[n],
        chart.isClosed(t));
  }

  /** Movement towards the cheek of a crown that leans buccally (positive) or lingually, mm. */
  private double lean(Tooth t) {
    return leans(t, Tilt.BUCCAL) ? shift(t) : leans(t, Tilt.LINGUAL) ? -shift(t) : 0;
  }

  private boolean leans(Tooth t, Tilt way) {
    return chart.stands(t) && chart.tooth(t).tilt().filter(way::equals).isPresent();
  }

  private double shift(Tooth t) {
    return Math.min(GREATEST_SHIFT, MM_PER_DEGREE * tiltDegrees(t));
  }

  private double tiltDegrees(Tooth t) {
    ToothFindings f = chart.tooth(t);
    return chart.stands(t) && f.tilt().isPresent() ? f.tiltDegrees().orElse(USUAL_TILT) : 0;
  }

  /** How far a turned crown reaches forwards and back along the arch, and where it touches, mm. */
  private record Reach(double front, double back, double contactHeight) {

    static Reach of(CrownShape shape, double halfWidth, double halfDepth, double turn) {
      if (turn == 0) {
        double height = (shape.mesialContact() + shape.distalContact()) / 2;
        return new Reach(halfWidth, halfWidth, height * halfDepth);
      }
      double c = Math.cos(turn);
      double s = Math.sin(turn);
      double front = 0;
      double back = 0;
      double frontHeight = 0;
      double backHeight = 0;
      for (Point p : shape.outline()) {
        double m = p.x() * halfWidth;
        double b = p.y() * halfDepth;
        double along = m * c + b * s;
        double height = b * c - m * s;
        if (along > front) {
          front = along;
          frontHeight = height;
        }
        if (-along > back) {
          back = -along;
          backHeight = height;
        }
      }
      return new Reach(front, back, (frontHeight + backHeight) / 2);
    }
  }
}
