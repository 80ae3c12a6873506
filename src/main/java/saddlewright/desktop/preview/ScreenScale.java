package saddlewright.desktop.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.stage.Screen;
import javafx.stage.Window;

/**
 * How many pixels make a millimetre on the screen that a window stands on. A screen tells its own
 * resolution, and many tell a wrong one; a user can measure it.
 */
public final class ScreenScale {
  private static final double MM_PER_INCH = 25.4;

  /** Where a screen tells nothing that can be true. */
  private static final double USUAL_DPI = 96;

  private final List<Runnable> listeners = new ArrayList<>();
  private final MeasuredScreens measured;
  private String screen = "";
  private double told = USUAL_DPI / MM_PER_INCH;

  public ScreenScale(MeasuredScreens measured) {
    this.measured = measured;
  }

  /** Pixels of the window in a millimetre. */
  public double pixelsPerMm() {
    return measured.pixelsPerMm(screen).orElse(told);
  }

  void addListener(Runnable listener) {
    listeners.add(listener);
  }

  /** Takes what the screen under a window tells. */
  public void read(Window window) {
    List<Screen> under =
        Screen.getScreensForRectangle(
            window.getX() + window.getWidth() / 2, window.getY() + window.getHeight() / 2, 1, 1);
    Screen now = under.isEmpty() ? Screen.getPrimary() : under.get(0);
    String name =
        Math.round(now.getBounds().getWidth() * now.getOutputScaleX())
            + "x"
            + Math.round(now.getBounds().getHeight() * now.getOutputScaleY())
            + "@"
            + Math.round(now.getDpi());
    if (!name.equals(screen)) {
      screen = name;
      double dpi = now.getDpi() / now.getOutputScaleX();
      told = (dpi >= 50 && dpi <= 400 ? dpi : USUAL_DPI) / MM_PER_INCH;
      listeners.forEach(Runnable::run);
    }
  }

  /** Takes what a user has measured, in pixels a millimetre; empty to believe the screen again. */
  void measure(Optional<Double> pixelsPerMm) {
    measured.note(screen, pixelsPerMm);
    listeners.forEach(Runnable::run);
  }
}
