package saddlewright.dentition;

/** One of the two dental arches. */
public enum Arch {
  UPPER,
  LOWER;

  /** Lower-case name as used in files and on the command line. */
  public String code() {
    return this == UPPER ? "upper" : "lower";
  }

  public Arch opposite() {
    return this == UPPER ? LOWER : UPPER;
  }
}
