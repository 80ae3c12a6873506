package saddlewright.prescription.pdf;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;

/**
 * The practice's own picture at the head of a prescription. It is no part of the case: a case that
 * is handed on names no practice by it.
 *
 * <p>Whatever the file holds, it is printed opaque, in the colours of a screen and no finer than a
 * printer shows, so that the document stays an archive document and small.
 */
public final class Letterhead {
  /** Largest size on paper. */
  static final double HIGHEST = 14 * Sheet.MM;

  static final double WIDEST = 70 * Sheet.MM;

  private static final int MAX_BYTES = 5_000_000;
  private static final int MAX_SIDE = 8_000;

  /** 300 dots an inch over the greatest width. */
  private static final int FINEST = 830;

  private final BufferedImage picture;

  private Letterhead(BufferedImage picture) {
    this.picture = picture;
  }

  /**
   * The picture in a PNG or JPEG file.
   *
   * @throws CaseFileException with a sentence, when there is none that can be printed
   */
  public static Letterhead of(Path file) throws CaseFileException {
    String name = AtomicFile.nameOf(file);
    try {
      if (!Files.isRegularFile(file)) {
        throw refusal(name, "there is no such file. Choose the picture again");
      }
      if (Files.size(file) > MAX_BYTES) {
        throw refusal(name, "it is larger than 5 MB. Save it smaller");
      }
      return of(Files.readAllBytes(file), name);
    } catch (IOException e) {
      throw new CaseFileException(
          Kind.UNREADABLE,
          "The letterhead " + name + " cannot be read; choose another PNG or JPEG file.",
          e);
    }
  }

  private static Letterhead of(byte[] bytes, String name) throws IOException, CaseFileException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw refusal(name, "it is not a picture. Use a PNG or JPEG file");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        int wide = reader.getWidth(0);
        int high = reader.getHeight(0);
        if (wide > MAX_SIDE || high > MAX_SIDE) {
          throw refusal(name, "it has more than " + MAX_SIDE + " dots a side. Save it smaller");
        }
        return new Letterhead(opaque(reader.read(0)));
      } catch (RuntimeException e) {
        // Damaged pictures make the readers fail in many ways.
        throw refusal(name, "the picture is damaged. Save it anew as PNG");
      } finally {
        reader.dispose();
      }
    }
  }

  private static CaseFileException refusal(String name, String why) {
    return new CaseFileException(
        Kind.UNREADABLE, "The letterhead " + name + " cannot be printed: " + why + ".");
  }

  private static BufferedImage opaque(BufferedImage from) {
    double scale = Math.min(1, (double) FINEST / Math.max(from.getWidth(), from.getHeight()));
    int wide = Math.max(1, (int) Math.round(from.getWidth() * scale));
    int high = Math.max(1, (int) Math.round(from.getHeight() * scale));
    BufferedImage out = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = out.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, wide, high);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    g.drawImage(from, 0, 0, wide, high, null);
    g.dispose();
    return out;
  }

  BufferedImage picture() {
    return picture;
  }

  /** Width on paper, in points. */
  double width() {
    return picture.getWidth() * scale();
  }

  /** Height on paper, in points. */
  double height() {
    return picture.getHeight() * scale();
  }

  private double scale() {
    return Math.min(WIDEST / picture.getWidth(), HIGHEST / picture.getHeight());
  }
}
