package saddlewright.drawing;

/** What lies under a drawing in a file of its own. */
public enum Background {
  /** The colour of the paper, to the edges of the picture. */
  PAPER,
  /** Nothing: what the picture is laid on shows between the marks. */
  CLEAR
}
