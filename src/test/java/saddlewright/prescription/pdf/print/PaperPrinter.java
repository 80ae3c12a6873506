package saddlewright.prescription.pdf.print;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.Optional;
import javax.print.PrintService;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;
import javax.print.attribute.AttributeSet;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaPrintableArea;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;

/** A printer for tests: the JDK's own PostScript printer, with papers and margins of our choice. */
public final class PaperPrinter {
  private PaperPrinter() {}

  /** A printer that writes into a stream. */
  public static Printer into(ByteArrayOutputStream out) {
    return Printer.of(postScript(out));
  }

  /**
   * A printer that takes some papers.
   *
   * @param unprinted how wide its blank edge is, in mm; empty where it does not say
   */
  public static Printer taking(
      ByteArrayOutputStream out, Optional<Margins> unprinted, MediaSizeName... papers) {
    PrintService real = postScript(out);
    return Printer.of(
        (PrintService)
            Proxy.newProxyInstance(
                PaperPrinter.class.getClassLoader(),
                new Class<?>[] {PrintService.class},
                (self, method, arguments) -> {
                  if (method.getName().equals("getName")) {
                    return "Front desk";
                  }
                  if (method.getName().equals("getSupportedAttributeValues")
                      && arguments[0] == Media.class) {
                    return papers.clone();
                  }
                  if (method.getName().equals("getSupportedAttributeValues")
                      && arguments[0] == MediaPrintableArea.class) {
                    Object on = ((AttributeSet) arguments[2]).get(Media.class);
                    return unprinted.map(m -> new MediaPrintableArea[] {area(m, on)}).orElse(null);
                  }
                  try {
                    return method.invoke(real, arguments);
                  } catch (InvocationTargetException e) {
                    throw e.getCause();
                  }
                }));
  }

  private static MediaPrintableArea area(Margins m, Object name) {
    MediaSize s = MediaSize.getMediaSizeForName((MediaSizeName) name);
    return new MediaPrintableArea(
        (float) m.left(),
        (float) m.top(),
        (float) (s.getX(MediaSize.MM) - m.left() - m.right()),
        (float) (s.getY(MediaSize.MM) - m.top() - m.bottom()),
        MediaPrintableArea.MM);
  }

  static StreamPrintService postScript(ByteArrayOutputStream out) {
    return StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
        Printer.PAGES, "application/postscript")[0]
        .getPrintService(out);
  }
}
