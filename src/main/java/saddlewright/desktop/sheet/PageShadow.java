package saddlewright.desktop.sheet;

import javafx.beans.binding.DoubleExpression;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;

/**
 * The shadow of the page on the desk: the edges of a few pale sheets that stand out below it. A
 * blurred one would be computed anew at each step of a zoom, and sheets as large as the page would
 * be painted below it at each edit.
 */
final class PageShadow extends Group {
  private static final int SHEETS = 4;
  private static final double STEP = 0.4;
  private static final double DOWN = 0.6;
  private static final double OPACITY = 0.07;

  PageShadow(Rectangle page) {
    setMouseTransparent(true);
    DoubleExpression right = page.xProperty().add(page.widthProperty());
    DoubleExpression foot = page.yProperty().add(page.heightProperty());
    for (int i = 1; i <= SHEETS; i++) {
      double out = i * STEP;
      double above = Math.max(0, out - DOWN);
      DoubleExpression left = page.xProperty().subtract(out);
      DoubleExpression top = page.yProperty().subtract(out - DOWN);
      DoubleExpression across = page.widthProperty().add(2 * out);
      DoubleExpression down = foot.subtract(top);
      getChildren()
          .addAll(
              edge(left, foot, across, out + DOWN),
              edge(left, top, out, down),
              edge(right, top, out, down));
      if (above > 0) {
        getChildren().add(edge(page.xProperty(), top, page.widthProperty(), above));
      }
    }
  }

  private static Rectangle edge(
      DoubleExpression x, DoubleExpression y, DoubleExpression across, double down) {
    Rectangle r = edge(x, y);
    r.widthProperty().bind(across);
    r.setHeight(down);
    return r;
  }

  private static Rectangle edge(
      DoubleExpression x, DoubleExpression y, double across, DoubleExpression down) {
    Rectangle r = edge(x, y);
    r.setWidth(across);
    r.heightProperty().bind(down);
    return r;
  }

  private static Rectangle edge(DoubleExpression x, DoubleExpression y) {
    Rectangle r = new Rectangle();
    r.xProperty().bind(x);
    r.yProperty().bind(y);
    r.setFill(Color.gray(0, OPACITY));
    return r;
  }
}
