package saddlewright.desktop;

/**
 * A step of the trade's order of work; the one that is chosen says what a click on the sheet means.
 */
public enum Step {
  CHART,
  SURVEY,
  SADDLES,
  SUPPORT,
  RETENTION,
  BRACING,
  CONNECTORS,
  INDIRECT_RETENTION,
  REVIEW,
  PRESCRIPTION
}
