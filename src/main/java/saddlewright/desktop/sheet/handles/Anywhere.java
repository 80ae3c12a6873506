package saddlewright.desktop.sheet.handles;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import saddlewright.design.DesignEdit;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The whole sheet around an arch.
 *
 * @param here where the handle is now
 * @param place what it moves has this place, mm
 * @param edit what moves it to another
 */
public record Anywhere(Point here, Point place, Function<Point, DesignEdit> edit) implements Track {
  /** Farther off than this nothing is kept, mm. */
  private static final double LIMIT = 190;

  @Override
  public String words() {
    return words(place);
  }

  private static String words(Point p) {
    return Words.of(
        "handle.place",
        Words.number(Slide.onGrid(p.x(), Slide.FINE_GRID)),
        Words.number(Slide.onGrid(p.y(), Slide.FINE_GRID)));
  }

  @Override
  public Stop nearest(Point p, boolean fine) {
    double grid = fine ? Slide.FINE_GRID : Slide.GRID;
    return stop(place.plus(here.to(p)), grid);
  }

  private Stop stop(Point wanted, double grid) {
    Point set = new Point(coordinate(wanted.x(), grid), coordinate(wanted.y(), grid));
    return new Stop(here.plus(place.to(set)), words(set), edit.apply(set));
  }

  private static double coordinate(double v, double grid) {
    return Slide.onGrid(Math.max(-LIMIT, Math.min(LIMIT, v)), grid);
  }

  @Override
  public Optional<Stop> next(Vector towards, boolean fine) {
    double grid = fine ? Slide.FINE_GRID : Slide.GRID;
    return Optional.of(stop(place.plus(towards.times(grid)), grid));
  }

  @Override
  public List<Point> shown() {
    return List.of();
  }
}
