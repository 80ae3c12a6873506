package saddlewright.dentition;

/** The outer (buccal or labial) or the inner (lingual or palatal) face of a tooth. */
public enum Face {
  BUCCAL,
  LINGUAL;

  public Face opposite() {
    return this == BUCCAL ? LINGUAL : BUCCAL;
  }
}
