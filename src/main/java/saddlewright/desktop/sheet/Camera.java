package saddlewright.desktop.sheet;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.Node;
import javafx.scene.transform.Affine;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;

/** Which part of the sheet is seen, and how large. */
public final class Camera {
  /** Pixels in a millimetre where a screen tells nothing else: 96 pixels an inch. */
  static final double TRUE_SIZE = 96 / 25.4;

  private static final double LEAST = 0.4 * TRUE_SIZE;
  private static final double MOST = 16 * TRUE_SIZE;

  /** What is shown closely is not made larger than this, so that its surroundings are seen too. */
  private static final double CLOSE = 7 * TRUE_SIZE;

  private final Affine view = new Affine();
  private final ReadOnlyDoubleWrapper scale = new ReadOnlyDoubleWrapper(TRUE_SIZE);
  private final DoubleProperty trueScale = new SimpleDoubleProperty(TRUE_SIZE);
  private boolean fitted = true;

  Camera(Node page) {
    page.getTransforms().setAll(view);
  }

  /** Pixels in a millimetre. */
  public ReadOnlyDoubleProperty scaleProperty() {
    return scale.getReadOnlyProperty();
  }

  /** Pixels in a millimetre at which the sheet is seen as large as it is printed. */
  public DoubleProperty trueScaleProperty() {
    return trueScale;
  }

  /** Whether the last movement was to fit, so that it is done again when the window changes. */
  boolean isFitted() {
    return fitted;
  }

  /** What lies at a place of the window, in mm of the sheet. */
  public Point toSheet(double x, double y) {
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

  /** Shows a box as large as fits, but no larger than is of use; it is not fitted again. */
  void show(Box box, double width, double height, double margin) {
    fit(box, width, height, margin);
    fitted = false;
    if (scale.get() > CLOSE) {
      zoom(CLOSE / scale.get(), width / 2, height / 2);
    }
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
