package saddlewright.rules;

/** How much a finding weighs; the first is the gravest. */
public enum Severity {
  MUST,
  SHOULD,
  CONSIDER;

  /** Whether this is as grave as the other, or graver. */
  public boolean isAtLeast(Severity other) {
    return ordinal() <= other.ordinal();
  }

  public String code() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
