package saddlewright.desktop.sheet;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;

/** Makes one node of each mark, in millimetres. */
final class MarkNodes {
  /** Type is set this much larger and scaled down, since the toolkit rounds small type sizes. */
  private static final double TYPE_SCALE = 10;

  private final Palette palette;

  MarkNodes(Palette palette) {
    this.palette = palette;
  }

  Color colour(Ink ink) {
    return Color.web(palette.hex(ink));
  }

  Node of(Mark mark) {
    Node node = make(mark);
    node.setUserData(mark.subject().orElse(null));
    node.setMouseTransparent(true);
    return node;
  }

  private Node make(Mark mark) {
    if (mark instanceof Mark.Fill f) {
      return fill(f);
    }
    if (mark instanceof Mark.Stroke s) {
      return stroke(s);
    }
    if (mark instanceof Mark.Dots d) {
      return dots(d);
    }
    return label((Mark.Label) mark);
  }

  private Node fill(Mark.Fill f) {
    Path path = new Path();
    for (Outline o : f.outlines()) {
      add(path, o.points(), true);
    }
    path.setFillRule(FillRule.EVEN_ODD);
    path.setStroke(null);
    path.setFill(colour(f.ink()));
    path.setOpacity(f.opacity());
    path.setVisible(f.opacity() > 0);
    return path;
  }

  private Node stroke(Mark.Stroke s) {
    Path path = new Path();
    for (saddlewright.geometry.Path p : s.paths()) {
      add(path, p.points(), s.closed());
    }
    path.setFill(null);
    path.setStroke(colour(s.ink()));
    path.setStrokeWidth(s.width());
    path.setStrokeLineJoin(StrokeLineJoin.ROUND);
    path.setStrokeLineCap(s.dash().isEmpty() ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
    path.getStrokeDashArray().setAll(s.dash());
    return path;
  }

  private Node dots(Mark.Dots d) {
    Path path = new Path();
    double r = d.radius();
    for (Point p : d.points()) {
      path.getElements()
          .addAll(
              List.of(
                  new MoveTo(p.x() - r, p.y()),
                  new ArcTo(r, r, 0, p.x() + r, p.y(), false, true),
                  new ArcTo(r, r, 0, p.x() - r, p.y(), false, true),
                  new ClosePath()));
    }
    path.setStroke(null);
    path.setFill(colour(d.ink()));
    return path;
  }

  private Node label(Mark.Label l) {
    Text text = new Text(l.text());
    text.setFont(SheetType.font(l.bold(), l.size() * TYPE_SCALE));
    text.setFill(colour(l.ink()));
    text.setTextOrigin(VPos.BASELINE);
    double width = text.getLayoutBounds().getWidth() / TYPE_SCALE;
    double left =
        switch (l.align()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    text.getTransforms().add(new Scale(1 / TYPE_SCALE, 1 / TYPE_SCALE));
    text.setLayoutX(l.at().x() + left);
    // Digits and capitals stand 0.69 em high, so their middle lies 0.345 em above the base line.
    text.setLayoutY(l.at().y() + 0.345 * l.size());
    text.setAccessibleRole(AccessibleRole.TEXT);
    return text;
  }

  static void add(Path path, List<Point> points, boolean closed) {
    PathElement[] out = new PathElement[points.size() + (closed ? 1 : 0)];
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      out[i] = i == 0 ? new MoveTo(p.x(), p.y()) : new LineTo(p.x(), p.y());
    }
    if (closed) {
      out[points.size()] = new ClosePath();
    }
    path.getElements().addAll(out);
  }
}
