package saddlewright.desktop.sheet;

import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;

/**
 * Zooms and moves the sheet by wheel and touchpad: the wheel zooms where the pointer is, with Shift
 * it moves the sheet sideways; two fingers move it, and pinch it.
 */
final class ViewGestures {
  private static final double NOTCH = 1.12;

  /** What a notch of a wheel sends. */
  private static final double NOTCH_SENDS = 40;

  private static final double MOST_NOTCHES = 4;

  private final SheetPane sheet;
  private boolean fingers;

  ViewGestures(SheetPane sheet) {
    this.sheet = sheet;
    sheet.addEventHandler(ScrollEvent.SCROLL_STARTED, e -> fingers = true);
    sheet.addEventHandler(ScrollEvent.SCROLL_FINISHED, e -> fingers = false);
    sheet.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    sheet.addEventHandler(ZoomEvent.ZOOM, this::pinched);
  }

  private void scrolled(ScrollEvent e) {
    if (e.isControlDown() || e.isShortcutDown()) {
      zoom(e);
    } else if (e.isShiftDown()) {
      // Some platforms turn the wheel sideways themselves while Shift is held.
      sheet.pan(e.getDeltaX() == 0 ? e.getDeltaY() : e.getDeltaX(), 0);
    } else if (fingers || e.isInertia() || e.getDeltaX() != 0) {
      sheet.pan(e.getDeltaX(), e.getDeltaY());
    } else {
      zoom(e);
    }
    e.consume();
  }

  private void zoom(ScrollEvent e) {
    double notches = e.getDeltaY() / NOTCH_SENDS;
    if (notches != 0) {
      double bounded = Math.max(-MOST_NOTCHES, Math.min(MOST_NOTCHES, notches));
      sheet.zoom(Math.pow(NOTCH, bounded), e.getX(), e.getY());
    }
  }

  private void pinched(ZoomEvent e) {
    if (e.getZoomFactor() > 0) {
      sheet.zoom(e.getZoomFactor(), e.getX(), e.getY());
    }
    e.consume();
  }
}
