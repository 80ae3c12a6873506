package saddlewright.desktop.sheet.handles;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * A few places in a row.
 *
 * @param stops the places, neighbours beside each other
 * @param now the number of the place that the handle has
 * @param round whether the last is the neighbour of the first
 */
public record Steps(List<Stop> stops, int now, boolean round) implements Track {
  public Steps {
    stops = List.copyOf(stops);
    if (now < 0 || now >= stops.size()) {
      throw new IllegalArgumentException(
          "a handle has one of its " + stops.size() + " places, not number " + now);
    }
  }

  @Override
  public Point here() {
    return stops.get(now).at();
  }

  @Override
  public String words() {
    return stops.get(now).words();
  }

  @Override
  public Stop nearest(Point p, boolean fine) {
    return stops.stream().min(Comparator.comparingDouble(s -> s.at().distanceTo(p))).orElseThrow();
  }

  @Override
  public Optional<Stop> next(Vector towards, boolean fine) {
    Stop best = null;
    double most = 1e-6;
    for (int by : new int[] {-1, 1}) {
      int i = round ? Math.floorMod(now + by, stops.size()) : now + by;
      if (i >= 0 && i < stops.size() && i != now) {
        double way = here().to(stops.get(i).at()).dot(towards);
        if (way > most) {
          most = way;
          best = stops.get(i);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  @Override
  public List<Point> shown() {
    return stops.stream().map(Stop::at).toList();
  }
}
