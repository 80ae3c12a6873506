package saddlewright.chart;

/** The condition of a crown as an abutment. */
public enum Condition {
  SOUND,
  RESTORED,
  AMALGAM,
  CROWNED,
  CARIOUS,
  ROOT_FILLED
}
