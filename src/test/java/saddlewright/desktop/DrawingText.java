package saddlewright.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Mark;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Layout;

/** A drawing in words: one line a mark, with its box and size in tenths of millimetres. */
final class DrawingText {
  private DrawingText() {}

  static List<String> of(Layout layout) {
    return ArchDrawing.of(layout, DrawingOptions.DEFAULT).marks().stream()
        .map(DrawingText::line)
        .sorted()
        .toList();
  }

  /** What one has and the other has not: "-" for what went, "+" for what came. */
  static String difference(List<String> before, List<String> after) {
    List<String> gone = new ArrayList<>(before);
    after.forEach(gone::remove);
    List<String> come = new ArrayList<>(after);
    before.forEach(come::remove);
    StringBuilder out = new StringBuilder();
    gone.forEach(l -> out.append("- ").append(l).append('\n'));
    come.forEach(l -> out.append("+ ").append(l).append('\n'));
    return out.toString();
  }

  private static String line(Mark m) {
    String of = m.subject().map(s -> s.key()).orElse("the sheet");
    return of + ": " + m.layer() + " " + m.ink() + " " + shape(m);
  }

  private static String shape(Mark m) {
    if (m instanceof Mark.Fill f) {
      List<Point> all = new ArrayList<>();
      double length = 0;
      for (Outline o : f.outlines()) {
        all.addAll(o.points());
        length += o.toPath().length();
      }
      return "area, " + box(all) + ", border " + mm(length);
    }
    if (m instanceof Mark.Stroke s) {
      List<Point> all = new ArrayList<>();
      double length = 0;
      for (Path p : s.paths()) {
        all.addAll(p.points());
        length += p.length();
      }
      return "line, " + box(all) + ", length " + mm(length);
    }
    if (m instanceof Mark.Dots d) {
      return d.points().size() + " dots, " + box(d.points());
    }
    Mark.Label l = (Mark.Label) m;
    return "“" + l.text() + "” at " + mm(l.at().x()) + " " + mm(l.at().y());
  }

  private static String box(List<Point> points) {
    if (points.isEmpty()) {
      return "nowhere";
    }
    Box b = Box.around(points);
    return mm(b.minX()) + " " + mm(b.minY()) + " to " + mm(b.maxX()) + " " + mm(b.maxY());
  }

  /** To half a millimetre, so that no rounding of the arithmetic shows. */
  private static String mm(double v) {
    double rounded = Math.round(v * 2) / 2.0;
    return String.format(Locale.ROOT, "%.1f", rounded == 0 ? 0 : rounded);
  }
}
