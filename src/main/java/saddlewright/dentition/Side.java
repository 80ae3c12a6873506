package saddlewright.dentition;

/** The patient's right or left; the right is drawn on the viewer's left. */
public enum Side {
  RIGHT,
  LEFT;

  public Side opposite() {
    return this == RIGHT ? LEFT : RIGHT;
  }

  /** The word for it in files and sentences: "right" or "left". */
  public String code() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
