package saddlewright.desktop.sheet.handles;

import java.util.List;
import java.util.Optional;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** The places that a handle can have. */
public sealed interface Track permits Slide, Steps, Anywhere {
  /** Where the handle is now. */
  Point here();

  /** The place now, in words. */
  String words();

  /**
   * The place that is meant by pointing somewhere.
   *
   * @param fine whether places lie as close together as they can
   */
  Stop nearest(Point p, boolean fine);

  /**
   * The next place in a direction of the frame of the arch.
   *
   * @return empty where there is none that way
   */
  Optional<Stop> next(Vector towards, boolean fine);

  /** What is shown of the track while the handle is held: its line, or its places. */
  List<Point> shown();
}
