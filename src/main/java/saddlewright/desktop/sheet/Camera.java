package saddlewright.desktop.sheet;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.scene.Node;
import javafx.scene.transform.Affine;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;

/** Which part of the sheet is seen, and how large. */
public final class Camera {
  /** Pixels in a millimetre at 100 %: 96 pixels an inch. */
  public static final double TRUE_SIZE = 96 / 25.4;

  private static final double LEAST = 0.4 * TRUE_SIZE;
  private static final double MOST = 16 * TRUE_SIZE;

  private final Affine view = new Affine();
  private final ReadOnlyDoubleWrapper scale = new ReadOnlyDoubleWrapper(TRUE_SIZE);
  private boolean fitted = true;

  Camera(Node page) {
    page.getTransforms().setAll(view);
  }

  /** Pixels in a millimetre. */
  public ReadOnlyDoubleProperty scaleProperty() {
    return scale.getReadOnlyProperty();
  }

  /** Whether the last movement was to fit, so that it is done again when the window changes. */
  boolean isFitted() {
    return fitted;
  }

  Point toSheet(double x, double y) {
    return new Point((x - view.getTx()) / scale.get(), (y - view.getTy()) / scale.get());
  }

  Point toWindow(Point sheet) {
    return new Point(
        sheet.x() * scale.get() + view.getTx(), sheet.y() * scale.get() + view.getTy());
  }

  void pan(double dx, double dy) {
    fitted = false;
    set(scale.get(), view.getTx() + dx, view.getTy() + dy);
  }

  /** Zooms so that what lies under a place of the window stays there. */
  void zoom(double factor, double x, double y) {
    fitted = false;
    Point fixed = toSheet(x, y);
    double s = clamped(scale.get() * factor);
    set(s, x - fixed.x() * s, y - fixed.y() * s);
  }

  /** Shows a box of the sheet as large as fits into a window of the size. */
  void fit(Box box, double width, double height, double margin) {
    double w = Math.max(50, width - 2 * margin);
    double h = Math.max(50, height - 2 * margin);
    double s = clamped(Math.min(w / box.width(), h / box.height()));
    set(s, width / 2 - box.centre().x() * s, height / 2 - box.centre().y() * s);
    fitted = true;
  }

  /** Brings a box into view if it is not there, without zooming. */
  void reveal(Box box, double width, double height) {
    Point a = toWindow(new Point(box.minX(), box.minY()));
    Point b = toWindow(new Point(box.maxX(), box.maxY()));
    if (a.x() >= 0 && a.y() >= 0 && b.x() <= width && b.y() <= height) {
      return;
    }
    Point c = toWindow(box.centre());
    pan(width / 2 - c.x(), height / 2 - c.y());
  }

  private void set(double s, double tx, double ty) {
    view.setToTransform(s, 0, Math.round(tx), 0, s, Math.round(ty));
    scale.set(s);
  }

  private static double clamped(double s) {
    return Math.max(LEAST, Math.min(MOST, s));
  }
}
