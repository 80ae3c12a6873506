package saddlewright.desktop.sheet;

import javafx.scene.Group;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import saddlewright.geometry.Point;

/** Where on the sheet the keys act: a ring with four ticks, seen on any ground. */
final class SiteCursor extends Group {
  private static final double RADIUS = 9;
  private static final double TICK = 5;

  SiteCursor() {
    setId("site-cursor");
    setMouseTransparent(true);
    setVisible(false);
    add("halo");
    add("line");
  }

  private void add(String style) {
    Circle ring = new Circle(RADIUS);
    ring.setFill(null);
    styled(ring, style);
    for (int i = 0; i < 4; i++) {
      double x = Math.cos(i * Math.PI / 2);
      double y = Math.sin(i * Math.PI / 2);
      double far = RADIUS + TICK;
      styled(new Line(RADIUS * x, RADIUS * y, far * x, far * y), style);
    }
  }

  private void styled(Shape shape, String style) {
    shape.getStyleClass().addAll("site-cursor", style);
    getChildren().add(shape);
  }

  /** Stands at a place of the pane. */
  void standAt(Point p) {
    setTranslateX(p.x());
    setTranslateY(p.y());
    setVisible(true);
  }

  void leave() {
    setVisible(false);
  }
}
