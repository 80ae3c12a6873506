package saddlewright.chart;

/** What becomes of the place of a tooth that does not stand. */
public enum GapDecision {
  REPLACED,
  NOT_REPLACED,
  /** The neighbours have drifted together: there is no space. */
  CLOSED
}
