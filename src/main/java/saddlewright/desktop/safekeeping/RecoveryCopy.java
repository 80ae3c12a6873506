package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PatientIdentity;

/**
 * A case as it stands on a desk and in no file of the user's.
 *
 * @param file the user's file of the case, once it has one
 * @param base digest of what that file held when the work began; empty where that is not known
 * @param at when it was edited last
 * @param edit what that edit is called; may be empty
 * @param patient who the patient is
 * @param isPatientKept whether who the patient is is saved nowhere else
 */
public record RecoveryCopy(
    Case subject,
    Optional<Path> file,
    Optional<String> base,
    Instant at,
    String edit,
    Optional<PatientIdentity> patient,
    boolean isPatientKept) {
  public RecoveryCopy {
    Objects.requireNonNull(subject);
    Objects.requireNonNull(file);
    Objects.requireNonNull(base);
    Objects.requireNonNull(at);
    Objects.requireNonNull(edit);
    Objects.requireNonNull(patient);
  }

  /** How the user's file stands now to what it held when the work began. */
  public FoundWork.Disk disk() {
    return DeskFile.compare(file, base);
  }

  /** The same work with no file of the user's. */
  public RecoveryCopy withoutFile() {
    return new RecoveryCopy(
        subject, Optional.empty(), Optional.empty(), at, edit, patient, isPatientKept);
  }

  RecoveryCopy of(Optional<PatientIdentity> whose) {
    return new RecoveryCopy(subject, file, base, at, edit, whose, isPatientKept);
  }
}
