package saddlewright.drawing;

import java.util.List;
import java.util.Locale;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Writes a drawing as SVG at true scale: one user unit is one millimetre. */
public final class SvgWriter {
  private static final String FONT = "Liberation Sans, Arial, Helvetica, sans-serif";

  private final Palette palette;
  private final StringBuilder out = new StringBuilder();

  private SvgWriter(Palette palette) {
    this.palette = palette;
  }

  /**
   * The drawing as an SVG document.
   *
   * @param title accessible name of the picture
   */
  public static String write(
      Drawing drawing, Palette palette, Background background, String title) {
    SvgWriter w = new SvgWriter(palette);
    w.document(drawing, background, title);
    return w.out.toString();
  }

  private void document(Drawing drawing, Background background, String title) {
    Box b = drawing.bounds();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(mm(b.width()))
        .append("mm\" height=\"")
        .append(mm(b.height()))
        .append("mm\" viewBox=\"")
        .append(mm(b.minX()))
        .append(' ')
        .append(mm(b.minY()))
        .append(' ')
        .append(mm(b.width()))
        .append(' ')
        .append(mm(b.height()))
        .append("\" role=\"img\">\n<title>")
        .append(escaped(title))
        .append("</title>\n");
    if (background == Background.PAPER) {
      paper(b);
    }
    for (Mark mark : drawing.marks()) {
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
    out.append("</svg>\n");
  }

  private void paper(Box b) {
    out.append("<rect x=\"")
        .append(mm(b.minX()))
        .append("\" y=\"")
        .append(mm(b.minY()))
        .append("\" width=\"")
        .append(mm(b.width()))
        .append("\" height=\"")
        .append(mm(b.height()))
        .append("\" fill=\"")
        .append(palette.hex(Ink.PAPER))
        .append("\"/>\n");
  }

  private void fill(Mark.Fill f) {
    if (f.opacity() <= 0) {
      return;
    }
    out.append("<path fill-rule=\"evenodd\" fill=\"").append(palette.hex(f.ink())).append('"');
    if (f.opacity() < 1) {
      out.append(" fill-opacity=\"").append(mm(f.opacity())).append('"');
    }
    out.append(" d=\"");
    for (Outline o : f.outlines()) {
      points(o.points(), true);
    }
    out.append("\"/>\n");
  }

  private void stroke(Mark.Stroke s) {
    out.append("<path fill=\"none\" stroke-linejoin=\"round\" stroke-linecap=\"")
        .append(s.dash().isEmpty() ? "round" : "butt")
        .append("\" stroke=\"")
        .append(palette.hex(s.ink()))
        .append("\" stroke-width=\"")
        .append(mm(s.width()))
        .append('"');
    if (!s.dash().isEmpty()) {
      out.append(" stroke-dasharray=\"");
      for (int i = 0; i < s.dash().size(); i++) {
        out.append(i == 0 ? "" : " ").append(mm(s.dash().get(i)));
      }
      out.append('"');
    }
    out.append(" d=\"");
    for (Path p : s.paths()) {
      points(p.points(), s.closed());
    }
    out.append("\"/>\n");
  }

  private void dots(Mark.Dots d) {
    out.append("<path fill=\"none\" stroke-linecap=\"round\" stroke=\"")
        .append(palette.hex(d.ink()))
        .append("\" stroke-width=\"")
        .append(mm(2 * d.radius()))
        .append("\" d=\"");
    for (Point p : d.points()) {
      out.append('M').append(mm(p.x())).append(' ').append(mm(p.y())).append("h0");
    }
    out.append("\"/>\n");
  }

  private void label(Mark.Label l) {
    // Liberation Sans: digits and capitals stand 0.69 em high, so their middle lies 0.345 em up.
    double baseline = l.at().y() + 0.345 * l.size();
    out.append("<text x=\"")
        .append(mm(l.at().x()))
        .append("\" y=\"")
        .append(mm(baseline))
        .append("\" font-family=\"")
        .append(FONT)
        .append("\" font-size=\"")
        .append(mm(l.size()))
        .append("\" text-anchor=\"")
        .append(l.align().name().toLowerCase(Locale.ROOT))
        .append("\" fill=\"")
        .append(palette.hex(l.ink()))
        .append('"')
        .append(l.bold() ? " font-weight=\"bold\"" : "")
        .append('>')
        .append(escaped(l.text()))
        .append("</text>\n");
  }

  private void points(List<Point> points, boolean closed) {
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      out.append(i == 0 ? 'M' : i == 1 ? 'L' : ' ').append(mm(p.x())).append(' ').append(mm(p.y()));
    }
    if (closed) {
      out.append('Z');
    }
  }

  /** A number with at most three decimals, a dot, and no exponent. */
  private static String mm(double v) {
    long thousandths = Math.round(v * 1000);
    String sign = thousandths < 0 ? "-" : "";
    long a = Math.abs(thousandths);
    if (a % 1000 == 0) {
      return sign + a / 1000;
    }
    String frac = Long.toString(1000 + a % 1000).substring(1);
    int end = frac.length();
    while (frac.charAt(end - 1) == '0') {
      end--;
    }
    return sign + a / 1000 + "." + frac.substring(0, end);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
