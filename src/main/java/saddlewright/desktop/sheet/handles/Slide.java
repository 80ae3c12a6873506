package saddlewright.desktop.sheet.handles;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import saddlewright.design.DesignEdit;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * A straight line on which a length is set.
 *
 * @param here where the handle is now
 * @param along unit vector in which the length grows
 * @param now the length, mm
 * @param least smallest length that the component can have, mm
 * @param most greatest length, mm
 * @param edit what sets a length
 */
public record Slide(
    Point here,
    Vector along,
    double now,
    double least,
    double most,
    DoubleFunction<DesignEdit> edit)
    implements Track {
  /** Lengths are set in steps of this, mm: what a technician can keep to on a cast. */
  static final double GRID = 0.5;

  /** The same when more care is asked for, mm. */
  static final double FINE_GRID = 0.1;

  @Override
  public String words() {
    return Words.mm(onGrid(now, FINE_GRID));
  }

  @Override
  public Stop nearest(Point p, boolean fine) {
    return at(now + here.to(p).dot(along), fine);
  }

  @Override
  public Optional<Stop> next(Vector towards, boolean fine) {
    double way = towards.dot(along);
    // Across the line the arrows still do something: to the right is more.
    double sign = Math.abs(way) > 1e-6 ? Math.signum(way) : Math.signum(towards.x() + towards.y());
    double grid = fine ? FINE_GRID : GRID;
    double next =
        sign > 0
            ? (Math.floor(now / grid + 1e-6) + 1) * grid
            : (Math.ceil(now / grid - 1e-6) - 1) * grid;
    return next < least - 1e-9 || next > most + 1e-9 ? Optional.empty() : Optional.of(stop(next));
  }

  /** The stop at a length, on the grid and within what the component can have. */
  private Stop at(double length, boolean fine) {
    double grid = fine ? FINE_GRID : GRID;
    double lowest = Math.ceil(least / grid - 1e-9) * grid;
    double highest = Math.floor(most / grid + 1e-9) * grid;
    return stop(Math.max(lowest, Math.min(highest, onGrid(length, grid))));
  }

  private Stop stop(double length) {
    double set = onGrid(length, FINE_GRID);
    return new Stop(here.plus(along.times(set - now)), Words.mm(set), edit.apply(set));
  }

  static double onGrid(double length, double grid) {
    // A tenth has no exact binary form: what was worked out is rounded again to be one to the eye.
    return Math.round(Math.round(length / grid) * grid * 1000) / 1000.0;
  }

  @Override
  public List<Point> shown() {
    return List.of(
        here.plus(along.times(Math.max(-SHOWN, least - now))),
        here.plus(along.times(Math.min(SHOWN, most - now))));
  }

  /** As much of the line is shown to either side, mm. */
  private static final double SHOWN = 12;
}
