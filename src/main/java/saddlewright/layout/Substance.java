package saddlewright.layout;

/** What a laid-out body is made of. */
public enum Substance {
  CAST_METAL,
  WIRE,
  POLYMER,
  ACRYLIC,
  /** Lines and notes: no body that could join anything. */
  NONE
}
