package saddlewright.dentition;

/** The mesial or the distal end of a tooth. */
public enum End {
  MESIAL,
  DISTAL;

  public End opposite() {
    return this == MESIAL ? DISTAL : MESIAL;
  }
}
