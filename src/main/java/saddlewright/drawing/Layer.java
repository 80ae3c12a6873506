package saddlewright.drawing;

/** Order of painting, lowest first. */
public enum Layer {
  TISSUE,
  ANATOMY,
  SADDLES,
  TEETH,
  FRAMEWORK,
  COMPONENTS,
  SURVEY,
  LABELS,
  NOTES,
  CALLOUTS
}
