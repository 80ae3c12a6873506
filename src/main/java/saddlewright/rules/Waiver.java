package saddlewright.rules;

import java.time.LocalDate;

/**
 * A signed judgement that a finding is accepted.
 *
 * @param findingKey {@link Finding#key()} of the finding
 * @param reason why; never blank
 * @param role who judged, such as "prescriber" or "tutor"
 * @param date when
 * @param facts {@link Finding#facts()} at that time
 */
public record Waiver(String findingKey, String reason, String role, LocalDate date, String facts) {
  public Waiver {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("a waiver needs a reason");
    }
  }
}
