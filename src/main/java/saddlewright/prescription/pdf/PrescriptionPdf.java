package saddlewright.prescription.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Notation;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Palette;
import saddlewright.prescription.ToothWords;

/**
 * The laboratory prescription of a case as a PDF document: A4, vectors and embedded type, the
 * drawing at true scale, the component schedule and all that goes with it.
 *
 * <p>The same case and date give the same bytes. Any case can be printed: what is empty becomes a
 * ruled line, what is unwise is listed.
 */
public final class PrescriptionPdf {
  private PrescriptionPdf() {}

  /** Writes the document in colour with teeth numbered by ISO 3950; the stream is left open. */
  public static void write(Assessment assessment, LocalDate date, OutputStream out)
      throws IOException {
    out.write(toBytes(assessment, date));
  }

  /** The document in colour with teeth numbered by ISO 3950. */
  public static byte[] toBytes(Assessment assessment, LocalDate date) {
    return toBytes(assessment, date, Notation.FDI, Palette.PAPER);
  }

  /**
   * The document.
   *
   * @param date the day it is made; stands in the document and in its metadata
   * @param notation how teeth are numbered
   * @param palette colours of the drawing, such as {@link Palette#MONO} for a printer without
   */
  public static byte[] toBytes(
      Assessment assessment, LocalDate date, Notation notation, Palette palette) {
    return toBytes(assessment, date, notation, palette, List.of());
  }

  /**
   * The document.
   *
   * @param date the day it is made; stands in the document and in its metadata
   * @param notation how teeth are numbered
   * @param palette colours of the drawing, such as {@link Palette#MONO} for a printer without
   * @param signs what is marked on the drawing, such as {@link
   *     saddlewright.prescription.FindingSign#callouts}
   */
  public static synchronized byte[] toBytes(
      Assessment assessment,
      LocalDate date,
      Notation notation,
      Palette palette,
      List<Callout> signs) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    try (PDDocument document = new PDDocument()) {
      Tags tags = new Tags();
      Flow flow = new Flow(document, new TypeFace(document), tags);
      new FirstPage(assessment, notation, palette, signs, flow).write(date);
      new Particulars(assessment, notation, flow).write();
      RunningHeads.write(
          flow.sheets(), assessment.subject().reference(), ToothWords.name(notation));
      for (Sheet s : flow.sheets()) {
        s.close();
      }
      tags.into(document);
      Metadata.write(document, assessment.subject(), date);
      document.save(bytes);
    } catch (IOException e) {
      // Nothing here touches a file: only a damaged font in the program can bring us here.
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
