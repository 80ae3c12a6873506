package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.SaddleReach.Stop;

/**
 * The course of a lower bar: its lane beside the teeth, and the turn by which each end runs into a
 * saddle.
 *
 * <p>In the lane the centreline keeps a distance from every gingival margin, and from the inner
 * border of bare ridges that it passes. At an end that lies in or beside a saddle it leaves the
 * lane just past the abutment and swings on to the ridge, to meet the mesh.
 */
final class BarCourse {
  /** How far past the abutment the bar leaves its lane, mm. */
  private static final double LEAD = 0.4;

  /** Length of the turn into a saddle, mm. */
  private static final double TURN = 15;

  /** What lies in the saddle beyond the turn, mm. */
  private static final double FOOT = 1;

  /** Where the foot lies, from the crest inwards or outwards, mm. */
  private static final double ON_RIDGE = 2.8;

  /** Guard against the step between measured points, mm. */
  private static final double GUARD = 0.06;

  private final double[] across;
  private final double from;
  private final double to;
  private final Path path;

  /** An end of the bar: where its lane ends, and where the metal ends. */
  private record Tail(double lane, double end, boolean turns, double room) {}

  private BarCourse(double[] across, double from, double to, Path path) {
    this.across = across;
    this.from = from;
    this.to = to;
    this.path = path;
  }

  /**
   * @param clear distance in mm of the centreline from the margins
   * @param face lingual, or buccal for a labial bar
   */
  static BarCourse of(Ground ground, Span span, double clear, Face face) {
    RidgeFrame ridge = ground.ridge();
    boolean in = face == Face.LINGUAL;
    Tail a = tail(ground, span, Side.RIGHT);
    Tail b = tail(ground, span, Side.LEFT);
    Path margin = in ? ground.form().lingualMargin() : ground.form().buccalMargin();
    List<Point> near = new ArrayList<>();
    for (Point p : margin.sampled(0.7)) {
      double arc = ridge.arcOf(p);
      if (arc >= a.lane - sight(a, clear) && arc <= b.lane + sight(b, clear)) {
        near.add(p);
      }
    }
    double[] need = ridge.clearOf(near, clear + GUARD, in);
    double[] lane = laneValues(ridge, need, a.lane, b.lane);
    lane = Fairing.above(Fairing.above(lane, 2), 2);
    double[] course = new double[lane.length];
    for (int i = 0; i < lane.length; i++) {
      double arc = ridge.arc(i);
      double v = lane[i];
      v = turned(v, a, a.lane - arc);
      v = turned(v, b, arc - b.lane);
      course[i] = Math.max(v, need[i]);
    }
    course = Fairing.mean(Fairing.above(course, 1), 1);
    for (int i = 0; i < course.length; i++) {
      course[i] = Math.max(course[i], need[i]);
    }
    return course(ridge, in ? course : negated(course), a, b);
  }

  /** How far past the end of the lane margins still count: all round a blunt end. */
  private static double sight(Tail tail, double clear) {
    return tail.turns ? 0.5 : 2 * clear;
  }

  /**
   * The course of a bar that lies on the lingual surfaces of the teeth themselves.
   *
   * @param beyond distance in mm of the centreline lingual of the smoothed margins
   */
  static BarCourse onTeeth(Ground ground, Span span, double beyond) {
    RidgeFrame ridge = ground.ridge();
    Tail a = tail(ground, span, Side.RIGHT);
    Tail b = tail(ground, span, Side.LEFT);
    double[] course = new double[ridge.size()];
    for (int i = 0; i < course.length; i++) {
      course[i] = ridge.lingualMargin(ridge.arc(i)) + beyond;
    }
    course = Fairing.mean(Fairing.mean(course, 4), 3);
    for (int i = 0; i < course.length; i++) {
      double v = turned(course[i], a, a.lane - ridge.arc(i));
      course[i] = turned(v, b, ridge.arc(i) - b.lane);
    }
    return course(ridge, course, a, b);
  }

  private static BarCourse course(RidgeFrame ridge, double[] across, Tail a, Tail b) {
    double from = Math.min(a.end, b.end);
    double to = Math.max(Math.max(a.end, b.end), from + 2);
    return new BarCourse(across, from, to, ridge.curve(across, from, to));
  }

  private static double[] negated(double[] values) {
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      out[i] = -values[i];
    }
    return out;
  }

  Path path() {
    return path;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  /** Distance across at the stations of the ridge, mm, positive inwards. */
  double[] across() {
    return across.clone();
  }

  private static double turned(double lane, Tail tail, double past) {
    if (!tail.turns || past <= LEAD) {
      return lane;
    }
    double turn = Math.min(TURN, tail.room);
    return lane + (Math.min(lane, ON_RIDGE) - lane) * Fairing.step((past - LEAD) / turn);
  }

  /** The distances needed within the lane, carried on level beyond its ends. */
  private static double[] laneValues(RidgeFrame ridge, double[] need, double from, double to) {
    int lo = (int) Math.ceil(from / ridge.step());
    int hi = (int) Math.floor(to / ridge.step());
    lo = Math.max(0, Math.min(need.length - 1, lo));
    hi = Math.max(lo, Math.min(need.length - 1, hi));
    double[] out = new double[need.length];
    for (int i = 0; i < need.length; i++) {
      out[i] = need[Math.max(lo, Math.min(hi, i))];
    }
    return out;
  }

  private static Tail tail(Ground ground, Span span, Side side) {
    Tooth end = side == Side.RIGHT ? span.first() : span.last();
    int out = side == Side.RIGHT ? -1 : 1;
    Optional<Saddle> saddle = saddleAt(ground, end, out);
    if (saddle.isEmpty()) {
      double arc = ground.ridge().arcOf(ground.tooth(end).centre());
      double reach = arc + out * Math.max(0, ground.tooth(end).halfWidth() - 1);
      return new Tail(reach, reach, false, 0);
    }
    SaddleReach reach = SaddleReach.of(ground, saddle.get().span());
    boolean crosses = saddle.get().span().crossesMidline();
    Stop near = side == Side.RIGHT ? reach.last() : reach.first();
    Stop far = side == Side.RIGHT ? reach.first() : reach.last();
    double start = side == Side.RIGHT ? reach.to() : reach.from();
    if (crosses || near != Stop.ABUTMENT) {
      // No abutment on the way: the lane ends at the place that the designer named.
      start = ground.ridge().arcOf(ground.tooth(end).centre());
    }
    double limit = side == Side.RIGHT ? reach.from() : reach.to();
    double room = Math.abs(limit - start) - (far == Stop.ABUTMENT ? 2.5 : 1.5);
    double run = Math.max(1, Math.min(LEAD + TURN + FOOT, room));
    return new Tail(start, start + out * run, true, Math.max(2.5, Math.min(TURN, run - 1)));
  }

  /** The saddle in which an end of the span lies, or the one beside it. */
  private static Optional<Saddle> saddleAt(Ground ground, Tooth end, int out) {
    Optional<Saddle> here = ground.design().saddleAt(end);
    if (here.isPresent()) {
      return here;
    }
    return ground.next(end, out).flatMap(t -> ground.design().saddleAt(t));
  }
}
