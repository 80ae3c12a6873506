package saddlewright.classification;

/** Kennedy class of an arch, or the reason why it has none. */
public enum KennedyClass {
  /** Free-end areas on both sides. */
  I,
  /** A free-end area on one side. */
  II,
  /** Bounded areas only, or one that does not cross the midline. */
  III,
  /** One bounded area that crosses the midline, and nothing else to replace. */
  IV,
  /** Nothing to be replaced. */
  NONE,
  /** No tooth stands: complete denture. */
  EDENTULOUS
}
