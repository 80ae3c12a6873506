package saddlewright.desktop.desks;

import java.util.List;
import java.util.Optional;
import java.util.Properties;
import javafx.geometry.Rectangle2D;

/**
 * Where windows stand: the first where one was closed last, each further one a little below and to
 * the right of the window in front, and none where no screen would show it.
 *
 * @param area place of the window and size of its content, in pixels of the screen
 * @param maximised whether it fills the screen; its area is then what it goes back to
 */
public record WindowPlaces(Rectangle2D area, boolean maximised) {
  /** A step of the cascade: as much as shows the title of the window below. */
  static final double STEP = 32;

  private static final double LEAST_WIDTH = 960;
  private static final double LEAST_HEIGHT = 600;
  private static final double MOST = 10000;

  /** So much of a window must lie on a screen for it to be found and moved. */
  private static final double SEEN = 120;

  /**
   * The place that was kept; empty where there is none on these screens.
   *
   * @param usual size where none was kept
   */
  public static WindowPlaces kept(Properties p, Rectangle2D usual, List<Rectangle2D> screens) {
    double width = number(p, "width", LEAST_WIDTH, MOST, usual.getWidth());
    double height = number(p, "height", LEAST_HEIGHT, MOST, usual.getHeight());
    Rectangle2D first = screens.get(0);
    double w = Math.min(width, Math.max(first.getWidth(), LEAST_WIDTH));
    double h = Math.min(height, Math.max(first.getHeight(), LEAST_HEIGHT));
    Rectangle2D middle =
        new Rectangle2D(
            first.getMinX() + Math.max(0, (first.getWidth() - w) / 2),
            first.getMinY() + Math.max(0, (first.getHeight() - h) / 3),
            w,
            h);
    Rectangle2D area =
        p.containsKey("x") && p.containsKey("y")
            ? new Rectangle2D(
                number(p, "x", -MOST, MOST, middle.getMinX()),
                number(p, "y", -MOST, MOST, middle.getMinY()),
                w,
                h)
            : middle;
    return new WindowPlaces(
        isSeen(area, screens) ? area : middle, Boolean.parseBoolean(p.getProperty("maximised")));
  }

  /** The place of a further window. */
  public static WindowPlaces after(WindowPlaces front, List<Rectangle2D> screens) {
    Rectangle2D a = front.area();
    Rectangle2D on =
        screens.stream()
            .filter(s -> s.contains(a.getMinX(), a.getMinY()))
            .findFirst()
            .orElse(screens.get(0));
    double x = a.getMinX() + STEP;
    double y = a.getMinY() + STEP;
    boolean leaves = x + a.getWidth() > on.getMaxX() || y + a.getHeight() > on.getMaxY();
    // Where a window is as large as the screen it can only stand beside its corner.
    boolean atCorner = a.getMinX() == on.getMinX() && a.getMinY() == on.getMinY();
    return new WindowPlaces(
        leaves && !atCorner
            ? new Rectangle2D(on.getMinX(), on.getMinY(), a.getWidth(), a.getHeight())
            : new Rectangle2D(x, y, a.getWidth(), a.getHeight()),
        false);
  }

  /** What is kept of a place; one that fills the screen keeps the area that was kept before. */
  public String text(Properties before) {
    StringBuilder out = new StringBuilder();
    if (maximised) {
      for (String key : List.of("x", "y", "width", "height")) {
        Optional.ofNullable(before.getProperty(key))
            .ifPresent(v -> out.append(key).append('=').append(v).append('\n'));
      }
    } else {
      out.append("x=").append(Math.round(area.getMinX()));
      out.append("\ny=").append(Math.round(area.getMinY()));
      out.append("\nwidth=").append(Math.round(area.getWidth()));
      out.append("\nheight=").append(Math.round(area.getHeight())).append('\n');
    }
    return out.append("maximised=").append(maximised).append('\n').toString();
  }

  private static boolean isSeen(Rectangle2D a, List<Rectangle2D> screens) {
    return screens.stream()
        .anyMatch(
            s ->
                a.getMinY() >= s.getMinY()
                    && a.getMinY() + STEP <= s.getMaxY()
                    && Math.min(a.getMaxX(), s.getMaxX()) - Math.max(a.getMinX(), s.getMinX())
                        >= SEEN);
  }

  private static double number(
      Properties p, String key, double least, double most, double otherwise) {
    try {
      double v = Double.parseDouble(p.getProperty(key, ""));
      return v >= least && v <= most ? v : otherwise;
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }
}
