package saddlewright.drawing.raster;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import saddlewright.drawing.Background;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Paints a drawing as a PNG image whose resolution is written into the file. */
public final class PngPainter {
  public static final int LEAST_DPI = 10;
  public static final int MOST_DPI = 2400;

  private static final double MM_PER_INCH = 25.4;

  /** Keeps an image below some 400 million pixels, which is what a Java array can hold in RGB. */
  private static final double MAX_PIXELS = 3e8;

  private final Palette palette;
  private final Graphics2D g;

  private PngPainter(Palette palette, Graphics2D g) {
    this.palette = palette;
    this.g = g;
  }

  /**
   * Writes the drawing at true scale.
   *
   * @param dpi pixels an inch, 10 to 2400
   */
  public static void write(
      Drawing drawing, Palette palette, Background background, int dpi, OutputStream out)
      throws IOException {
    if (dpi < LEAST_DPI || dpi > MOST_DPI) {
      throw new IllegalArgumentException(
          dpi + " dots per inch is out of range; use a number from 10 to 2400");
    }
    writePng(image(drawing, palette, background, dpi / MM_PER_INCH), dpi, out);
  }

  private static BufferedImage image(
      Drawing drawing, Palette palette, Background background, double pixelsPerMm) {
    Box b = drawing.bounds();
    double w = Math.ceil(b.width() * pixelsPerMm);
    double h = Math.ceil(b.height() * pixelsPerMm);
    if (w * h > MAX_PIXELS) {
      throw new IllegalArgumentException("the image would be too large; use fewer dots per inch");
    }
    boolean paper = background == Background.PAPER;
    BufferedImage image =
        new BufferedImage(
            (int) w, (int) h, paper ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(pixelsPerMm, pixelsPerMm);
    g.translate(-b.minX(), -b.minY());
    PngPainter p = new PngPainter(palette, g);
    if (paper) {
      g.setColor(p.colour(Ink.PAPER, 1));
      g.fill(new Rectangle2D.Double(b.minX(), b.minY(), b.width() + 1, b.height() + 1));
    }
    drawing.marks().forEach(p::paint);
    g.dispose();
    return image;
  }

  private void paint(Mark mark) {
    if (mark instanceof Mark.Fill f) {
      if (f.opacity() > 0) {
        g.setColor(colour(f.ink(), f.opacity()));
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Outline o : f.outlines()) {
          add(shape, o.points(), true);
        }
        g.fill(shape);
      }
    } else if (mark instanceof Mark.Stroke s) {
      g.setColor(colour(s.ink(), 1));
      g.setStroke(pen(s));
      Path2D shape = new Path2D.Double();
      for (Path p : s.paths()) {
        add(shape, p.points(), s.closed());
      }
      g.draw(shape);
    } else if (mark instanceof Mark.Dots d) {
      g.setColor(colour(d.ink(), 1));
      double r = d.radius();
      for (Point p : d.points()) {
        g.fill(new Ellipse2D.Double(p.x() - r, p.y() - r, 2 * r, 2 * r));
      }
    } else if (mark instanceof Mark.Label l) {
      label(l);
    }
  }

  private static BasicStroke pen(Mark.Stroke s) {
    if (s.dash().isEmpty()) {
      return new BasicStroke((float) s.width(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[s.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) (double) s.dash().get(i);
    }
    return new BasicStroke(
        (float) s.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }

  private void label(Mark.Label l) {
    g.setColor(colour(l.ink(), 1));
    Font font = SheetFont.get(l.bold()).deriveFont((float) l.size());
    // Glyph shapes, not drawString: hinting would round the advance widths at this tiny em.
    var vector = font.createGlyphVector(SheetFont.EXACT, l.text());
    double width = vector.getLogicalBounds().getWidth();
    double x =
        switch (l.align()) {
          case START -> l.at().x();
          case MIDDLE -> l.at().x() - width / 2;
          case END -> l.at().x() - width;
        };
    g.fill(vector.getOutline((float) x, (float) (l.at().y() + 0.345 * l.size())));
  }

  private static void add(Path2D shape, List<Point> points, boolean closed) {
    shape.moveTo(points.get(0).x(), points.get(0).y());
    for (int i = 1; i < points.size(); i++) {
      shape.lineTo(points.get(i).x(), points.get(i).y());
    }
    if (closed) {
      shape.closePath();
    }
  }

  private Color colour(Ink ink, double opacity) {
    int rgb = palette.rgb(ink);
    return new Color(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, (int) Math.round(opacity * 255));
  }

  private static void writePng(BufferedImage image, int dpi, OutputStream out) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    IIOMetadata meta =
        writer.getDefaultImageMetadata(
            ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
    IIOMetadataNode phys = new IIOMetadataNode("pHYs");
    String perMetre = Long.toString(Math.round(dpi / MM_PER_INCH * 1000));
    phys.setAttribute("pixelsPerUnitXAxis", perMetre);
    phys.setAttribute("pixelsPerUnitYAxis", perMetre);
    phys.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
    root.appendChild(phys);
    meta.mergeTree("javax_imageio_png_1.0", root);
    ImageIO.setUseCache(false);
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, meta), null);
    } finally {
      writer.dispose();
    }
  }
}
