package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;

/**
 * The prescriber's word that the design is theirs.
 *
 * @param manner by hand on the paper, or in the file
 * @param name who signed
 * @param registration their registration or licence number; may be empty
 * @param on the day
 * @param designHash fingerprint of the design that was signed; the signature holds for no other
 */
public record Signature(
    Manner manner, String name, String registration, LocalDate on, String designHash) {
  /** How it was signed. */
  public enum Manner {
    BY_HAND,
    ELECTRONIC
  }

  public Signature {
    Objects.requireNonNull(manner);
    Objects.requireNonNull(registration);
    Objects.requireNonNull(on);
    Objects.requireNonNull(designHash);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a signature has a name");
    }
  }
}
