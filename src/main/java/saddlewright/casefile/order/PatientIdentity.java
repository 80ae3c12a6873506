package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Whose case it is. It is never part of the case: it lies in a file of its own, which the reference
 * alone joins to it, and is printed on a slip of its own.
 *
 * @param reference the case reference that it belongs to
 * @param name name of the patient; may be empty
 * @param born date of birth
 * @param record number of the patient's record; may be empty
 */
public record PatientIdentity(
    String reference, String name, Optional<LocalDate> born, String record) {
  public PatientIdentity {
    Objects.requireNonNull(reference);
    Objects.requireNonNull(name);
    Objects.requireNonNull(born);
    Objects.requireNonNull(record);
  }

  public static PatientIdentity none(String reference) {
    return new PatientIdentity(reference, "", Optional.empty(), "");
  }

  /** Whether it tells nothing. */
  public boolean isEmpty() {
    return name.isBlank() && born.isEmpty() && record.isBlank();
  }
}
