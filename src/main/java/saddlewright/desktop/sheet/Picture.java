package saddlewright.desktop.sheet;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;
import saddlewright.geometry.Box;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/** A drawing of one arch as an illustration. */
public final class Picture {
  private static final double MARGIN_MM = 3;

  private Picture() {}

  /** The arch, as on the sheet, at a width in pixels. */
  public static Node of(Layout layout, double width) {
    return of(layout, width, Palette.PAPER);
  }

  /** The same in other colours. */
  public static Node of(Layout layout, double width, Palette palette) {
    Drawing d = ArchDrawing.of(layout, DrawingOptions.DEFAULT);
    boolean lower = layout.form().arch() == saddlewright.dentition.Arch.LOWER;
    Transform t = lower ? Transform.scaling(1, -1) : Transform.IDENTITY;
    Drawing page = d.transformed(t);
    MarkNodes maker = new MarkNodes(palette);
    Group marks = new Group();
    for (Mark m : page.marks()) {
      marks.getChildren().add(maker.of(m));
    }
    // Words at the edge of the arch reach beyond the middle of their line.
    Box frame = page.bounds().grown(MARGIN_MM);
    double scale = width / frame.width();
    marks
        .getTransforms()
        .addAll(new Scale(scale, scale), new Translate(-frame.minX(), -frame.minY()));
    Pane pane = new Pane(marks);
    double height = frame.height() * scale;
    pane.setMinSize(width, height);
    pane.setPrefSize(width, height);
    pane.setMaxSize(width, height);
    pane.setCache(true);
    return pane;
  }
}
