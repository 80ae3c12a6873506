package saddlewright.casefile.order;

import java.util.Objects;

/**
 * Something that is sent along with the prescription.
 *
 * @param kind what it is
 * @param count how many of it, from 1
 * @param detail which, of what material, in what tray; may be empty
 */
public record Enclosure(Kind kind, int count, String detail) {
  /** What is sent along. */
  public enum Kind {
    IMPRESSION("impression"),
    STUDY_CAST("study cast"),
    MASTER_CAST("master cast"),
    OPPOSING_CAST("opposing cast"),
    BITE_RECORD("bite record"),
    FACEBOW_RECORD("facebow record"),
    PHOTOGRAPH("photograph"),
    SCAN("scan file"),
    OLD_DENTURE("old denture"),
    FRAMEWORK("framework"),
    TRIAL_DENTURE("trial denture"),
    OTHER("other");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public Enclosure {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(detail);
    if (count < 1 || count > 999) {
      throw new IllegalArgumentException("the count of an enclosure is from 1 to 999");
    }
  }
}
