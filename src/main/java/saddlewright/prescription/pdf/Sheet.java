package saddlewright.prescription.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** One page being filled; points from its top left corner, y downwards. */
final class Sheet implements AutoCloseable {
  /** Points in a millimetre. */
  static final double MM = 72 / 25.4;

  private final PDDocument document;
  private final PDPage page;
  private final PDPageContentStream content;
  private final TypeFace face;
  private final Tags tags;
  private final double height;

  Sheet(PDDocument document, PDRectangle size, TypeFace face, Tags tags) throws IOException {
    this.document = document;
    this.page = new PDPage(size);
    this.face = face;
    this.tags = tags;
    this.height = size.getHeight();
    document.addPage(page);
    this.content = new PDPageContentStream(document, page);
  }

  double width() {
    return page.getMediaBox().getWidth();
  }

  double height() {
    return height;
  }

  PDPageContentStream content() {
    return content;
  }

  TypeFace face() {
    return face;
  }

  /** Begins content that belongs to an element of the structure. */
  void begin(PDStructureElement element) throws IOException {
    content.beginMarkedContent(
        COSName.getPDFName(element.getStructureType()), tags.mark(element, page));
  }

  /** Begins content that is not read aloud: rules, running heads, feet. */
  void beginArtifact() throws IOException {
    content.beginMarkedContent(COSName.ARTIFACT);
  }

  void end() throws IOException {
    content.endMarkedContent();
  }

  /** Words from a place on their base line. */
  void text(double x, double baseline, String words, Weight weight, double size, Shade shade)
      throws IOException {
    if (words.isEmpty()) {
      return;
    }
    fill(shade);
    content.beginText();
    content.newLineAtOffset(round(x), round(height - baseline));
    SetLine.of(words).show(content, face, weight, size);
    content.endText();
  }

  /** The same, ending at a place. */
  void textEnding(double x, double baseline, String words, Weight weight, double size, Shade shade)
      throws IOException {
    text(x - TypeFace.width(words, weight, size), baseline, words, weight, size, shade);
  }

  /** Bold words that run upwards at an angle in radians from a place on their base line. */
  void turnedText(double x, double baseline, double angle, String words, double size, Shade shade)
      throws IOException {
    fill(shade);
    content.beginText();
    content.setTextMatrix(Matrix.getRotateInstance(angle, round(x), round(height - baseline)));
    SetLine.of(words).show(content, face, Weight.BOLD, size);
    content.endText();
  }

  void rule(double x, double y, double toX, double thickness, Shade shade) throws IOException {
    stroke(shade);
    content.setLineDashPattern(new float[0], 0);
    content.setLineCapStyle(0);
    content.setLineWidth((float) thickness);
    content.moveTo(round(x), round(height - y));
    content.lineTo(round(toX), round(height - y));
    content.stroke();
  }

  void box(double x, double y, double w, double h, double thickness, Shade shade)
      throws IOException {
    stroke(shade);
    content.setLineDashPattern(new float[0], 0);
    content.setLineJoinStyle(0);
    content.setLineWidth((float) thickness);
    content.addRect(round(x), round(height - y - h), round(w), round(h));
    content.stroke();
  }

  /** An area of the page as its file measures it, from the bottom left corner. */
  PDRectangle area(double x, double y, double w, double h) {
    return new PDRectangle(round(x), round(height - y - h), round(w), round(h));
  }

  /** A box to cut along. */
  void dashedBox(double x, double y, double w, double h, double thickness, Shade shade)
      throws IOException {
    stroke(shade);
    content.setLineDashPattern(new float[] {4, 3}, 0);
    content.setLineJoinStyle(0);
    content.setLineCapStyle(0);
    content.setLineWidth((float) thickness);
    content.addRect(round(x), round(height - y - h), round(w), round(h));
    content.stroke();
  }

  /** A filled upright bar. */
  void bar(double x, double y, double w, double h, Shade shade) throws IOException {
    fill(shade);
    content.addRect(round(x), round(height - y - h), round(w), round(h));
    content.fill();
  }

  /** A picture with its top left corner at a place. */
  void picture(BufferedImage picture, double x, double y, double w, double h) throws IOException {
    PDImageXObject image = LosslessFactory.createFromImage(document, picture);
    content.drawImage(image, round(x), round(height - y - h), round(w), round(h));
  }

  private void fill(Shade shade) throws IOException {
    content.setNonStrokingColor(shade.red(), shade.green(), shade.blue());
  }

  private void stroke(Shade shade) throws IOException {
    content.setStrokingColor(shade.red(), shade.green(), shade.blue());
  }

  /** A hundredth of a point is 0.004 mm: finer than any printer, and short in the file. */
  static float round(double v) {
    return Math.round(v * 100) / 100f;
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
