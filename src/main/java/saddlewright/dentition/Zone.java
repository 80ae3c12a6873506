package saddlewright.dentition;

import java.util.Optional;

/** One of the six places around a crown where an undercut is charted and a clasp tip can lie. */
public enum Zone {
  MESIOBUCCAL(Face.BUCCAL, End.MESIAL),
  MID_BUCCAL(Face.BUCCAL, null),
  DISTOBUCCAL(Face.BUCCAL, End.DISTAL),
  MESIOLINGUAL(Face.LINGUAL, End.MESIAL),
  MID_LINGUAL(Face.LINGUAL, null),
  DISTOLINGUAL(Face.LINGUAL, End.DISTAL);

  private final Face face;
  private final End end;

  Zone(Face face, End end) {
    this.face = face;
    this.end = end;
  }

  public static Zone of(Face face, Optional<End> end) {
    for (Zone z : values()) {
      if (z.face == face && z.end == end.orElse(null)) {
        return z;
      }
    }
    throw new AssertionError();
  }

  public Face face() {
    return face;
  }

  /** The end of the tooth at which the zone lies; empty for the middle of the face. */
  public Optional<End> end() {
    return Optional.ofNullable(end);
  }
}
