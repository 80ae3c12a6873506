package saddlewright.desktop;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.desktop.preview.DeskDocument;
import saddlewright.desktop.preview.IssueDialog;
import saddlewright.prescription.Issue;
import saddlewright.prescription.pdf.Unprintable;

/**
 * Writes the prescription of the case on the desk as PDF: as it stands, or as a revision that goes
 * out and is recorded in the case.
 */
final class PrescriptionFiles {
  private final Worktable table;
  private final CaseFiles files;

  PrescriptionFiles(Worktable table, CaseFiles files) {
    this.table = table;
    this.files = files;
  }

  /** Asks, before a window, where it is to be written, and writes it. */
  void save(Window owner) {
    ask(owner, Words.of("file.export-pdf"), table.current()).ifPresent(this::write);
  }

  void write(Path file) {
    write(file, DeskDocument.of(table)).ifPresent(this::tell);
  }

  /** Asks whether it may go out, and where to, then writes it and records it. */
  void issue(Window owner, Runnable toTheForm) {
    Issue issue = new Issue(table.assessment(), table.patientProperty().get(), LocalDate.now());
    new IssueDialog(owner, issue)
        .ask(
            () ->
                ask(owner, Words.of("file.issue"), issue.recorded().subject())
                    .ifPresent(file -> issue(file, issue)),
            field -> {
              table.goTo(field);
              toTheForm.run();
            });
  }

  /** Writes what goes out; only when it is on the disk does the case record it. */
  void issue(Path file, Issue issue) {
    Case recorded = issue.recorded().subject();
    write(file, DeskDocument.of(table).issued(issue))
        .ifPresent(
            written -> {
              if (issue.isRepeated()) {
                tell(written);
                return;
              }
              int number = recorded.prescription().issued().size();
              table.apply(Words.of("edit.issue", number), recorded);
              table
                  .noticeProperty()
                  .set(
                      Optional.of(
                          Words.of("notice.issued", AtomicFile.nameOf(written))
                              + issue.signing().map(s -> " " + s).orElse("")
                              + squares(recorded)));
            });
  }

  private Optional<Path> ask(Window owner, String title, Case named) {
    FileChooser chooser = files.chooser("PDF", "*.pdf");
    chooser.setTitle(title.replace("_", ""));
    chooser.setInitialFileName(Issue.fileName(named));
    return FileQuestion.toSave(chooser, owner).map(f -> CaseFiles.withEnding(f, ".pdf"));
  }

  /** The file, when it has been written. */
  private Optional<Path> write(Path file, DeskDocument document) {
    try {
      AtomicFile.write(file, document.toBytes());
      return Optional.of(file);
    } catch (CaseFileException e) {
      table.noticeProperty().set(Optional.of(e.sentences()));
      return Optional.empty();
    }
  }

  private void tell(Path written) {
    table
        .noticeProperty()
        .set(
            Optional.of(
                Words.of("notice.exported", AtomicFile.nameOf(written))
                    + squares(table.current())));
  }

  /** What stands as squares on the paper, to follow what else is said of it. */
  private String squares(Case printed) {
    String said =
        Unprintable.sentence(Unprintable.of(printed, DeskDocument.of(table).options().patient()));
    return said.isEmpty() ? "" : " " + said;
  }
}
