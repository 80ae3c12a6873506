package saddlewright.rules;

/**
 * Where a rule or a number comes from.
 *
 * @param citation the work, as one would cite it, or the reasoning for a derived value
 * @param evidence how far it was checked
 */
public record Source(String citation, Evidence evidence) {
  /** How far a source was checked. */
  public enum Evidence {
    /** The statement was read in the source or in notes that quote it. */
    READ("read in the source"),
    FROM_MEMORY("from memory"),
    COMMON_PRACTICE("common practice"),
    DERIVED("derived");

    private final String words;

    Evidence(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The citation with how far it was checked: "Eliason 1983 (read in the source)". */
  public String words() {
    return citation + " (" + evidence.words() + ")";
  }

  public static Source read(String citation) {
    return new Source(citation, Evidence.READ);
  }

  public static Source fromMemory(String citation) {
    return new Source(citation, Evidence.FROM_MEMORY);
  }

  public static Source commonPractice(String citation) {
    return new Source(citation, Evidence.COMMON_PRACTICE);
  }

  public static Source derived(String reasoning) {
    return new Source(reasoning, Evidence.DERIVED);
  }
}
