package saddlewright.prescription;

import java.util.Locale;
import java.util.Optional;

/** What a preparation answers: the kind of component that asks for it, or what was charted. */
public enum Demand {
  EXTRACTION("extraction"),
  RIDGE("ridge"),
  DISEASE("care"),
  CARIES("caries"),
  ROOT_FILLING("root filling"),
  CROWN("surveyed crown"),
  ROOM("room between the arches"),
  GUIDE("guide plane"),
  RECIPROCATION("reciprocal surface"),
  RETENTION("retentive undercut"),
  APPROACH("ridge under a bar arm"),
  REST("rest seat"),
  EMBRASURE("embrasure clasp"),
  CUT_SURFACES("finishing"),
  FREE_END("altered-cast impression"),
  DOUBT("later addition");

  private final String words;

  Demand(String words) {
    this.words = words;
  }

  /** What is prepared, in a word or two. */
  public String words() {
    return words;
  }

  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<Demand> find(String code) {
    for (Demand d : values()) {
      if (d.code().equals(code)) {
        return Optional.of(d);
      }
    }
    return Optional.empty();
  }
}
