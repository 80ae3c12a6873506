package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A state of the prescription that has gone out.
 *
 * @param number from 1
 * @param on the day
 * @param hash fingerprint of all that it said
 */
public record IssuedRevision(int number, LocalDate on, String hash) {
  public IssuedRevision {
    Objects.requireNonNull(on);
    if (number < 1 || hash.isBlank()) {
      throw new IllegalArgumentException(
          "an issued revision has a number from 1 and the hash of its content");
    }
  }
}
