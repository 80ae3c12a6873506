package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** Joins a desk to its journal: what changes on it is kept until it is saved. */
public final class DeskJournal {
  private final Worktable table;
  private final DeskFile file;
  private final Journal journal;
  private Optional<PatientIdentity> patient;
  private Optional<RecoveryCopy> recovered = Optional.empty();

  /** Keeps what changes from now on. */
  public DeskJournal(Worktable table, DeskFile file, Safekeeping safe) {
    this.table = table;
    this.file = file;
    this.journal = safe.journal(table.safetyProperty()::set);
    this.patient = table.patientProperty().get();
    table.revisionProperty().addListener((o, was, now) -> changed());
  }

  public Journal journal() {
    return journal;
  }

  /** Until it is edited further, work that is about to be laid on the desk is as old as it was. */
  public void expect(RecoveryCopy work) {
    recovered = Optional.of(work);
  }

  private void changed() {
    Optional<PatientIdentity> before = patient;
    patient = table.patientProperty().get();
    if (!table.openProperty().get() || !table.unsavedProperty().get()) {
      journal.release();
      return;
    }
    Optional<RecoveryCopy> asFound = recovered.filter(r -> r.subject().equals(table.current()));
    journal.keep(
        new RecoveryCopy(
            table.current(),
            table.fileProperty().get().map(Path::toAbsolutePath),
            file.digest(),
            asFound.map(RecoveryCopy::at).orElseGet(Instant::now),
            asFound.map(RecoveryCopy::edit).orElseGet(() -> edit(before)),
            patient,
            !patient.equals(table.savedPatient())));
  }

  private String edit(Optional<PatientIdentity> before) {
    return patient.equals(before)
        ? table.undoNameProperty().get().orElse("")
        : Words.of("safe.edit-patient");
  }
}
