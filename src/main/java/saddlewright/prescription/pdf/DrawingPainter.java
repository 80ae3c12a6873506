package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * Paints a drawing as vectors at true scale: one millimetre is 72/25.4 points, always.
 *
 * <p>Hatches and dots are strokes and round-capped points, so that they print at the resolution of
 * the printer.
 */
final class DrawingPainter {
  /** Half the height of capitals of the face, as a share of the em: centres a line of words. */
  private static final double MIDDLE_OF_WORDS = 0.345;

  /**
   * Curves are given to the printer to this many millimetres: half of the finest dot that an office
   * printer sets, 25.4 mm / 1200.
   */
  private static final double FINEST = 0.01;

  private static final double HALF_OF_WIDEST_PEN = 0.5;

  private final Palette palette;
  private final Sheet sheet;
  private final PDPageContentStream out;
  private final double left;
  private final double top;
  private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();

  private final double finest;

  private DrawingPainter(Palette palette, Sheet sheet, double left, double top, double finest) {
    this.finest = finest;
    this.palette = palette;
    this.sheet = sheet;
    this.out = sheet.content();
    this.left = left;
    this.top = top;
  }

  /**
   * Paints all marks.
   *
   * @param left points from the left edge of the page to the origin of the drawing
   * @param top points from the top edge of the page to the origin of the drawing
   */
  static void paint(Drawing drawing, Palette palette, Sheet sheet, double left, double top)
      throws IOException {
    paint(drawing, palette, sheet, left, top, FINEST);
  }

  /**
   * The same for a drawing that nobody measures on.
   *
   * @param finest curves are given to so many millimetres
   */
  static void paint(
      Drawing drawing, Palette palette, Sheet sheet, double left, double top, double finest)
      throws IOException {
    DrawingPainter p = new DrawingPainter(palette, sheet, left, top, finest);
    p.out.saveGraphicsState();
    p.out.setLineJoinStyle(1);
    for (Mark m : drawing.marks()) {
      p.paint(m);
    }
    p.out.restoreGraphicsState();
  }

  /** The box around everything that is painted, words included, in millimetres. */
  static Box extent(Drawing drawing) {
    List<Point> all = new ArrayList<>();
    for (Mark m : drawing.marks()) {
      if (m instanceof Mark.Label l) {
        String words = TypeFace.printable(l.text());
        double x = startOf(l, words);
        all.add(new Point(x, l.at().y() - l.size()));
        all.add(new Point(x + wide(l, words), l.at().y() + l.size()));
      } else if (m instanceof Mark.Stroke s) {
        s.paths().forEach(p -> all.addAll(p.points()));
      } else if (m instanceof Mark.Fill f && f.opacity() > 0) {
        f.outlines().forEach(o -> all.addAll(o.points()));
      } else if (m instanceof Mark.Dots d) {
        all.addAll(d.points());
      }
    }
    return all.isEmpty() ? drawing.bounds() : Box.around(all).grown(HALF_OF_WIDEST_PEN);
  }

  private void paint(Mark mark) throws IOException {
    if (mark instanceof Mark.Fill f) {
      fill(f);
    } else if (mark instanceof Mark.Stroke s) {
      stroke(s);
    } else if (mark instanceof Mark.Dots d) {
      dots(d);
    } else if (mark instanceof Mark.Label l) {
      label(l);
    }
  }

  private void fill(Mark.Fill f) throws IOException {
    if (f.opacity() <= 0 || f.outlines().isEmpty()) {
      return;
    }
    boolean clear = f.opacity() < 1;
    if (clear) {
      out.saveGraphicsState();
      out.setGraphicsStateParameters(opacities.computeIfAbsent(f.opacity(), this::opacity));
    }
    out.setNonStrokingColor(red(f.ink()), green(f.ink()), blue(f.ink()));
    for (Outline o : f.outlines()) {
      trace(o.points());
      out.closePath();
    }
    out.fillEvenOdd();
    if (clear) {
      out.restoreGraphicsState();
    }
  }

  private PDExtendedGraphicsState opacity(double share) {
    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
    state.setNonStrokingAlphaConstant((float) share);
    return state;
  }

  private void stroke(Mark.Stroke s) throws IOException {
    if (s.paths().isEmpty()) {
      return;
    }
    pen(s.ink(), s.width(), s.dash());
    for (Path p : s.paths()) {
      trace(p.points());
      if (s.closed()) {
        out.closePath();
      }
    }
    out.stroke();
  }

  /** A dot is a line of no length with a round cap. */
  private void dots(Mark.Dots d) throws IOException {
    if (d.points().isEmpty()) {
      return;
    }
    pen(d.ink(), 2 * d.radius(), List.of());
    for (Point p : d.points()) {
      out.moveTo(x(p), y(p));
      out.lineTo(x(p), y(p));
    }
    out.stroke();
  }

  private void label(Mark.Label l) throws IOException {
    String words = TypeFace.printable(l.text());
    if (words.isBlank()) {
      return;
    }
    Point at = new Point(startOf(l, words), l.at().y() + MIDDLE_OF_WORDS * l.size());
    out.setNonStrokingColor(red(l.ink()), green(l.ink()), blue(l.ink()));
    out.beginText();
    out.newLineAtOffset(x(at), y(at));
    SetLine.of(words).show(out, sheet.face(), weight(l), l.size() * Sheet.MM);
    out.endText();
  }

  private void pen(Ink ink, double width, List<Double> dash) throws IOException {
    out.setStrokingColor(red(ink), green(ink), blue(ink));
    out.setLineWidth(Sheet.round(width * Sheet.MM));
    float[] pattern = new float[dash.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = Sheet.round(dash.get(i) * Sheet.MM);
    }
    out.setLineDashPattern(pattern, 0);
    out.setLineCapStyle(dash.isEmpty() ? 1 : 0);
  }

  private void trace(List<Point> path) throws IOException {
    List<Point> points = Thinning.of(path, finest);
    out.moveTo(x(points.get(0)), y(points.get(0)));
    for (int i = 1; i < points.size(); i++) {
      out.lineTo(x(points.get(i)), y(points.get(i)));
    }
  }

  private float x(Point p) {
    return Sheet.round(left + p.x() * Sheet.MM);
  }

  private float y(Point p) {
    return Sheet.round(sheet.height() - top - p.y() * Sheet.MM);
  }

  private static double startOf(Mark.Label l, String words) {
    return switch (l.align()) {
      case START -> l.at().x();
      case MIDDLE -> l.at().x() - wide(l, words) / 2;
      case END -> l.at().x() - wide(l, words);
    };
  }

  private static double wide(Mark.Label l, String words) {
    return TypeFace.width(words, weight(l), l.size());
  }

  private static Weight weight(Mark.Label l) {
    return l.bold() ? Weight.BOLD : Weight.REGULAR;
  }

  private float red(Ink ink) {
    return (palette.rgb(ink) >> 16 & 255) / 255f;
  }

  private float green(Ink ink) {
    return (palette.rgb(ink) >> 8 & 255) / 255f;
  }

  private float blue(Ink ink) {
    return (palette.rgb(ink) & 255) / 255f;
  }
}
