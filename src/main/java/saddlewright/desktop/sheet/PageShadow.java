package saddlewright.desktop.sheet;

import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;

/**
 * The shadow of the page on the desk: a few pale sheets that stand out below it. A blurred one
 * would be computed anew at each step of a zoom.
 */
final class PageShadow extends Group {
  private static final int SHEETS = 4;
  private static final double STEP = 0.4;
  private static final double DOWN = 0.6;
  private static final double OPACITY = 0.07;

  PageShadow(Rectangle page) {
    setMouseTransparent(true);
    for (int i = 1; i <= SHEETS; i++) {
      double out = i * STEP;
      Rectangle r = new Rectangle();
      r.xProperty().bind(page.xProperty().subtract(out));
      r.yProperty().bind(page.yProperty().subtract(out - DOWN));
      r.widthProperty().bind(page.widthProperty().add(2 * out));
      r.heightProperty().bind(page.heightProperty().add(2 * out));
      r.setArcWidth(2 * out);
      r.setArcHeight(2 * out);
      r.setFill(Color.gray(0, OPACITY));
      getChildren().add(r);
    }
  }
}
