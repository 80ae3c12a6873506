package saddlewright.classification;

/** Kennedy class of an arch, or the reason why it has none. */
public enum KennedyClass {
  /** Free-end areas on both sides. */
  I("I"),
  /** A free-end area on one side. */
  II("II"),
  /** Bounded areas only, or one that does not cross the midline. */
  III("III"),
  /** One bounded area that crosses the midline, and nothing else to replace. */
  IV("IV"),
  /** Nothing to be replaced. */
  NONE("none"),
  /** No tooth stands: complete denture. */
  EDENTULOUS("edentulous");

  private final String word;

  KennedyClass(String word) {
    this.word = word;
  }

  /** The word used in tables: I to IV, none or edentulous. */
  public String word() {
    return word;
  }

  /** Whether it is one of Kennedy's four classes. */
  public boolean isClass() {
    return ordinal() <= IV.ordinal();
  }
}
