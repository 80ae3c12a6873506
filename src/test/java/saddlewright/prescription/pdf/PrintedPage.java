package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a reader finds in a document when it reads it back. */
public final class PrintedPage {
  private PrintedPage() {}

  public static PDDocument read(byte[] bytes) throws IOException {
    return Loader.loadPDF(bytes);
  }

  /** All words in the order of the content, without white space. */
  public static String packed(byte[] bytes) throws IOException {
    try (PDDocument d = read(bytes)) {
      PDFTextStripper reader = new PDFTextStripper();
      // Otherwise a letter that lies over the same letter of a stamp is left out.
      reader.setSuppressDuplicateOverlappingText(false);
      return packed(reader.getText(d));
    }
  }

  public static String packed(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }

  /** Lengths in points of all level lines that are drawn by one move and one line. */
  public static List<Double> levelLines(PDPage page) throws IOException {
    List<Double> out = new ArrayList<>();
    List<Object> tokens = new PDFStreamParser(page).parse();
    List<Double> numbers = new ArrayList<>();
    double x = Double.NaN;
    double y = Double.NaN;
    for (Object t : tokens) {
      if (t instanceof COSNumber n) {
        numbers.add((double) n.floatValue());
      } else if (t instanceof Operator o) {
        if (o.getName().equals("cm")) {
          throw new AssertionError("the page is scaled, so that lengths cannot be read off");
        }
        boolean placed = o.getName().equals("m") || o.getName().equals("l");
        if (placed) {
          double nx = numbers.get(numbers.size() - 2);
          double ny = numbers.get(numbers.size() - 1);
          if (o.getName().equals("l") && ny == y) {
            out.add(Math.abs(nx - x));
          }
          x = nx;
          y = ny;
        }
        numbers.clear();
      }
    }
    return out;
  }

  public static List<PDFont> fonts(PDDocument document) throws IOException {
    List<PDFont> out = new ArrayList<>();
    for (PDPage p : document.getPages()) {
      for (COSName name : p.getResources().getFontNames()) {
        out.add(p.getResources().getFont(name));
      }
    }
    return out;
  }

  /** The places of all letters, by page, as left, right and distance from the top, in points. */
  static List<double[]> letters(PDDocument document) throws IOException {
    List<double[]> out = new ArrayList<>();
    new PDFTextStripper() {
      @Override
      protected void processTextPosition(TextPosition p) {
        if (Math.abs(p.getTextMatrix().getShearY()) > 1e-3) {
          return; // A stamp across the page or along its edge.
        }
        out.add(
            new double[] {
              p.getXDirAdj(),
              p.getXDirAdj() + p.getWidthDirAdj(),
              p.getYDirAdj(),
              p.getPageWidth(),
              p.getPageHeight()
            });
      }
    }.getText(document);
    return out;
  }
}
