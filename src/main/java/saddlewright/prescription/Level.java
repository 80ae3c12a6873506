package saddlewright.prescription;

/** How strongly a field is asked for. */
public enum Level {
  /** A prescription without it goes back to be completed. */
  MUST("must"),
  SHOULD("should"),
  OPTIONAL("optional"),
  /** It has no place on this document. */
  NOT_ASKED("-");

  private final String code;

  Level(String code) {
    this.code = code;
  }

  /** As in tables. */
  public String code() {
    return code;
  }

  static Level of(String code) {
    for (Level l : values()) {
      if (l.code.equals(code)) {
        return l;
      }
    }
    throw new IllegalArgumentException("\"" + code + "\" is no level");
  }
}
