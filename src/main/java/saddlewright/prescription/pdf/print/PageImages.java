package saddlewright.prescription.pdf.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The pages of a document as pictures, each made when it is asked for. They are rendered from the
 * very bytes that are saved and printed, so that what is looked at is the page.
 *
 * <p>One picture is made at a time, whichever threads ask.
 */
public final class PageImages implements Closeable {
  /** Points in a millimetre. */
  private static final double MM = 72 / 25.4;

  /** How finely blank edges are measured, in mm: finer than printers are fed. */
  private static final double STEP = 0.2;

  private final PDDocument document;
  private final PDFRenderer renderer;
  private final List<PageSize> sizes;
  private final Map<Integer, Margins> blank = new HashMap<>();

  private PageImages(PDDocument document) {
    this.document = document;
    this.renderer = new PDFRenderer(document);
    List<PageSize> all = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      PDRectangle box = page.getCropBox();
      all.add(new PageSize(box.getWidth() / MM, box.getHeight() / MM));
    }
    this.sizes = List.copyOf(all);
  }

  /** Opens the bytes of a PDF document, such as {@link PrescriptionPdf#toBytes} gives them. */
  public static PageImages of(byte[] pdf) {
    try {
      return new PageImages(Loader.loadPDF(pdf));
    } catch (IOException e) {
      // Nothing here touches a file: these are bytes that the program has made itself.
      throw new UncheckedIOException(e);
    }
  }

  /** Sizes of the pages in their order, in mm. */
  public List<PageSize> sizes() {
    return sizes;
  }

  /**
   * The picture of a page.
   *
   * @param page from 0
   * @param pixelsPerMm how large
   */
  public synchronized PageImage render(int page, double pixelsPerMm) {
    PageSize size = sizes.get(page);
    int width = (int) Math.max(1, Math.round(size.width() * pixelsPerMm));
    int height = (int) Math.max(1, Math.round(size.height() * pixelsPerMm));
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setBackground(Color.WHITE);
      g.clearRect(0, 0, width, height);
      float scale = (float) (pixelsPerMm / MM);
      renderer.renderPageToGraphics(page, g, scale, scale);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      g.dispose();
    }
    return new PageImage(
        width, height, ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
  }

  /**
   * How far from each edge a page is blank, to {@value #STEP} mm; from edge to edge where nothing
   * is printed.
   */
  public synchronized Margins blank(int page) {
    return blank.computeIfAbsent(page, this::measure);
  }

  private Margins measure(int page) {
    PageImage image = render(page, 1 / STEP);
    int left = image.width();
    int right = image.width();
    int top = image.height();
    int bottom = image.height();
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        if (image.isInked(x, y)) {
          left = Math.min(left, x);
          right = Math.min(right, image.width() - 1 - x);
          top = Math.min(top, y);
          bottom = image.height() - 1 - y;
        }
      }
    }
    return new Margins(left * STEP, top * STEP, right * STEP, bottom * STEP);
  }

  /** The words of a page in reading order, for those who hear it. */
  public synchronized String words(int page) {
    try {
      PDFTextStripper stripper = new PDFTextStripper();
      // Otherwise a letter that lies over the same letter of a stamp is left out.
      stripper.setSuppressDuplicateOverlappingText(false);
      stripper.setStartPage(page + 1);
      stripper.setEndPage(page + 1);
      return stripper.getText(document).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public synchronized void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
