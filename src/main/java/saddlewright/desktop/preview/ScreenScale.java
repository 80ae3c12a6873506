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
final class ScreenScale {
  private static final double MM_PER_INCH = 25.4;

  /** Where a screen tells nothing that can be true. */
  private static final double USUAL_DPI = 96;

  private final List<Runnable> listeners = new ArrayList<>();
  private Optional<Double> measured = Optional.empty();
  private double told = USUAL_DPI / MM_PER_INCH;

  /** Pixels of the window in a millimetre. */
  double pixelsPerMm() {
    return measured.orElse(told);
  }

  void addListener(Runnable listener) {
    listeners.add(listener);
  }

  /** Takes what the screen under a window tells. */
  void read(Window window) {
    List<Screen> under =
        Screen.getScreensForRectangle(
            window.getX() + window.getWidth() / 2, window.getY() + window.getHeight() / 2, 1, 1);
    Screen screen = under.isEmpty() ? Screen.getPrimary() : under.get(0);
    double dpi = screen.getDpi() / screen.getOutputScaleX();
    double now = (dpi >= 50 && dpi <= 400 ? dpi : USUAL_DPI) / MM_PER_INCH;
    if (now != told) {
      told = now;
      tell();
    }
  }

  /** Takes what a user has measured, in pixels a millimetre; empty to believe the screen again. */
  void measure(Optional<Double> pixelsPerMm) {
    measured = pixelsPerMm;
    tell();
  }

  private void tell() {
    listeners.forEach(Runnable::run);
  }
}
