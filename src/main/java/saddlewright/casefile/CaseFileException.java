package saddlewright.casefile;

/**
 * A case file that cannot be opened or saved, told in one or two sentences: the file, the place in
 * it, what is wrong and what to do.
 */
public final class CaseFileException extends Exception {
  private static final long serialVersionUID = 1L;

  /** The sort of trouble. */
  public enum Kind {
    /** The text is not JSON, or not UTF-8. */
    NOT_JSON,
    /** JSON, or a PDF document, but of something else. */
    NOT_A_CASE,
    /** JSON, but not a school profile where one was wanted. */
    NOT_A_PROFILE,
    /** JSON, but not the identity of a patient where one was wanted. */
    NOT_A_PATIENT,
    /** A case written by a later version of the program. */
    NEWER_VERSION,
    /** A case that holds something impossible: tooth 99, a negative size, one id twice. */
    IMPOSSIBLE,
    /** Larger or more deeply nested than any case. */
    TOO_LARGE,
    /** Missing, a folder, not allowed to be read, locked with a password, or damaged. */
    UNREADABLE,
    /** The case could not be written; what was there before is untouched. */
    NOT_SAVED
  }

  private final Kind kind;

  public CaseFileException(Kind kind, String sentences) {
    super(sentences);
    this.kind = kind;
  }

  public CaseFileException(Kind kind, String sentences, Throwable cause) {
    super(sentences, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }

  /** The trouble in one or two sentences, ready to be shown. */
  public String sentences() {
    return getMessage();
  }
}
