package saddlewright.prescription.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.StagePlan;

/**
 * The laboratory prescription of a case as a PDF document: vectors and embedded type, the drawing
 * at true scale, the component schedule and all that goes with it.
 *
 * <p>The same case and date give the same bytes. Any case can be printed: what is empty becomes a
 * ruled line, what is unwise is listed.
 */
public final class PrescriptionPdf {
  private PrescriptionPdf() {}

  /** Writes the document in colour on A4, teeth by ISO 3950; the stream is left open. */
  public static void write(Assessment assessment, LocalDate date, OutputStream out)
      throws IOException {
    out.write(toBytes(assessment, date));
  }

  /** The document in colour on A4, teeth by ISO 3950. */
  public static byte[] toBytes(Assessment assessment, LocalDate date) {
    return toBytes(assessment, PrintOptions.on(date));
  }

  /** The document. */
  public static synchronized byte[] toBytes(Assessment assessment, PrintOptions options) {
    Printout printout = Printout.of(assessment, options);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    try (PDDocument document = new PDDocument()) {
      Tags tags = new Tags();
      Optional<Stamp> stamp =
          printout.isCoursework() ? Optional.of(new Stamp(Stamp.EXERCISE)) : Optional.empty();
      Flow flow = new Flow(document, options.paper(), new TypeFace(document), tags, stamp);
      for (Section s : sections(printout)) {
        s.write(flow);
      }
      RunningHeads.write(flow, printout);
      for (Sheet s : flow.sheets()) {
        s.close();
      }
      tags.into(document);
      byte[] file = CaseCodec.toBytes(printout.subject());
      Metadata.of(printout, file).into(document);
      OutputIntent.into(document);
      if (!isSealed(printout.subject().prescription())) {
        EnclosedCase.into(document, file, options.date());
      }
      document.save(bytes);
    } catch (IOException e) {
      // Nothing here touches a file: only a damaged font in the program can bring us here.
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Whether the work is handed in as paper alone. */
  private static boolean isSealed(PrescriptionDetails p) {
    return p.kind() == DocumentKind.COURSEWORK && p.coursework().sealed();
  }

  /** What the document consists of, in order. */
  private static List<Section> sections(Printout p) {
    List<Section> out = new ArrayList<>();
    out.add(new CoverSection(p));
    out.add(new DesignSection(p));
    out.add(new ScheduleSection(p));
    out.add(new MaterialsSection(p));
    out.add(new SurveySection(p));
    out.add(new PreparationSection(p));
    if (!p.isCoursework() || !p.details().stages().equals(StagePlan.EMPTY)) {
      out.add(new StageSection(p));
    }
    if (!p.isCoursework()) {
      out.add(new EnclosureSection(p));
      out.add(new LabelSection(p));
      out.add(new ReturnSection(p));
      p.options().patient().ifPresent(w -> out.add(new IdentitySlip(p, w)));
    }
    if (p.isCoursework() && p.details().coursework().stepwise()) {
      out.add(new GrowthSection(p));
    }
    out.add(new FindingsSection(p));
    out.add(new ReasonsSection(p));
    if (!p.isCoursework()) {
      out.add(new RecordSection(p));
    }
    out.add(new UnprintableSection(p));
    out.add(new CautionsSection());
    return out;
  }
}
