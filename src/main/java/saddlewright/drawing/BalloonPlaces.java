package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Where numbers of components may stand: on rings around the arch, and in rows inside it. */
final class BalloonPlaces {
  /** From the middle of a balloon to that of the next, mm. */
  static final double PITCH = 4.7;

  /** From the curve of the tooth numbers to the ring, mm: half a number, half a balloon, a gap. */
  private static final double OUTSIDE_NUMBERS = 5.1;

  /** From one ring to the next, mm. */
  private static final double BETWEEN_RINGS = 5;

  /** How far the rings run beyond the arch at its open end, mm. */
  private static final double BEYOND = 3;

  /** Between the corners by which the inner border is followed, mm. */
  private static final double BORDER_STEP = 2;

  /** Clear around a balloon, mm. */
  private static final double GAP = 0.3;

  /** How many places a ring has for each number, at least. */
  private static final double SPARE = 1.1;

  /** A point in front of every arch, mm. */
  private static final Point IN_FRONT = new Point(0, -100);

  private BalloonPlaces() {}

  /** Places around the arch, from the middle outwards; more rings where one is not enough. */
  static List<Point> around(ArchForm form, int numbers) {
    List<Point> out = new ArrayList<>();
    for (int ring = 0; ring == 0 || out.size() < SPARE * numbers; ring++) {
      Path path = ring(form, OUTSIDE_NUMBERS + ring * BETWEEN_RINGS);
      double middle = path.arcNearest(IN_FRONT);
      for (double arc = PITCH / 2; arc <= path.length(); arc += PITCH) {
        if (middle - arc >= 0) {
          out.add(path.at(middle - arc));
        }
        if (middle + arc <= path.length()) {
          out.add(path.at(middle + arc));
        }
      }
    }
    return out;
  }

  /** The part of the plane that the rings take, whichever places are used. */
  static Box room(ArchForm form, int numbers) {
    return Box.around(around(form, numbers)).grown(PlacedCallout.RADIUS + GAP);
  }

  /** A curve outside the tooth numbers, straight at the open end of the arch. */
  private static Path ring(ArchForm form, double outside) {
    List<Point> numbers =
        form.teeth().stream()
            .filter(t -> !t.isClosed())
            .map(PlacedTooth::tooth)
            .map(form::labelPlace)
            .toList();
    double end = form.box().maxY() + BEYOND;
    List<Point> knots = new ArrayList<>();
    knots.add(new Point(numbers.get(0).x(), end));
    knots.addAll(numbers);
    knots.add(new Point(numbers.get(numbers.size() - 1).x(), end));
    return Path.through(Path.smooth(knots).sampled(1)).offset(-outside);
  }

  /** Places in straight rows and columns inside the arch, symmetric about the midline. */
  static List<Point> inside(ArchForm form) {
    List<Point> out = new ArrayList<>();
    double end = form.box().maxY() + BEYOND;
    Path margin = form.lingualMargin();
    Box b = margin.box();
    List<Point> border = new ArrayList<>();
    border.add(new Point(margin.start().x(), end + PITCH));
    border.addAll(margin.sampled(BORDER_STEP));
    border.add(new Point(margin.end().x(), end + PITCH));
    Outline room = Outline.of(border);
    for (double y = b.minY() + PITCH / 2; y <= end; y += PITCH) {
      for (double x = PITCH / 2; x < b.maxX() - PITCH / 2; x += PITCH) {
        for (Point p : List.of(new Point(-x, y), new Point(x, y))) {
          if (room.contains(p)) {
            out.add(p);
          }
        }
      }
    }
    return out;
  }
}
