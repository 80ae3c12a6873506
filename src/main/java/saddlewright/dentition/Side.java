package saddlewright.dentition;

/** The patient's right or left; the right is drawn on the viewer's left. */
public enum Side {
  RIGHT,
  LEFT;

  public Side opposite() {
    return this == RIGHT ? LEFT : RIGHT;
  }
}
