package saddlewright.desktop.preview;

import java.time.LocalDate;
import java.util.List;
import saddlewright.casefile.Assessment;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.Issue;
import saddlewright.prescription.NamedPatient;
import saddlewright.prescription.pdf.PrescriptionPdf;
import saddlewright.prescription.pdf.PrintOptions;

/**
 * The prescription as the desk stands: what it says, and how it is to look. What is marked on the
 * screen is marked on paper.
 *
 * @param signs whether findings are marked on the drawing
 */
public record DeskDocument(Assessment assessment, PrintOptions options, boolean signs) {

  /** The prescription of the case on the desk, as of today. */
  public static DeskDocument of(Worktable table) {
    return new DeskDocument(
        table.assessment(),
        PrintOptions.on(LocalDate.now())
            .with(table.notationProperty().get())
            .with(table.printedPalette())
            .with(table.paperProperty().get())
            .withPatient(
                NamedPatient.on(table.current().prescription(), table.patientProperty().get()))
            .withLetterhead(table.letterheadProperty().get()),
        table.markersProperty().get());
  }

  /** The same as it goes out: with the record of its issue, of the day of that. */
  public DeskDocument issued(Issue issue) {
    return new DeskDocument(issue.recorded(), options.with(issue.day()), signs);
  }

  /** The document; may be made on any thread. */
  public byte[] toBytes() {
    return PrescriptionPdf.toBytes(
        assessment,
        options.withSigns(signs ? FindingSign.callouts(assessment.report()) : List.of()));
  }
}
