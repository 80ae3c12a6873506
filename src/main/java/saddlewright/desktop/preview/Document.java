package saddlewright.desktop.preview;

import java.nio.IntBuffer;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import saddlewright.prescription.pdf.print.PageImage;
import saddlewright.prescription.pdf.print.PageImages;
import saddlewright.prescription.pdf.print.PageSize;

/** A document that has been made: its bytes, and its pages as pictures when they are asked for. */
final class Document {
  private final byte[] pdf;
  private final PageImages images;
  private final Backstage backstage;

  /** Opens a document; takes time. */
  Document(byte[] pdf, Backstage backstage) {
    this.pdf = pdf;
    this.images = PageImages.of(pdf);
    this.backstage = backstage;
  }

  byte[] pdf() {
    return pdf;
  }

  List<PageSize> sizes() {
    return images.sizes();
  }

  int count() {
    return images.sizes().size();
  }

  /** The pages for those who measure them; not on the thread of the window. */
  PageImages images() {
    return images;
  }

  /** Has a page rendered; a failure leaves what was shown before. */
  void picture(
      Backstage.Urgency urgency,
      int page,
      double pixelsPerMm,
      BooleanSupplier wanted,
      Consumer<Image> then) {
    backstage.make(
        urgency, wanted, () -> image(images.render(page, pixelsPerMm)), then, failure -> {});
  }

  void words(int page, BooleanSupplier wanted, Consumer<String> then) {
    backstage.make(Backstage.Urgency.WORDS, wanted, () -> images.words(page), then, failure -> {});
  }

  void close() {
    backstage.last(images::close);
  }

  private static Image image(PageImage page) {
    // The pixels are opaque, so that "premultiplied" is the same as not.
    return new WritableImage(
        new PixelBuffer<>(
            page.width(),
            page.height(),
            IntBuffer.wrap(page.argb()),
            PixelFormat.getIntArgbPreInstance()));
  }
}
