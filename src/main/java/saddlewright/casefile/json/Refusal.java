package saddlewright.casefile.json;

import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;

/** The end of a reading, on its way to become a {@link CaseFileException} that names the file. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Kind kind;

  private Refusal(Kind kind, String rest) {
    super(rest, null, false, false);
    this.kind = kind;
  }

  /** Something impossible at a place. */
  static Refusal at(Place place, String problem, String cure) {
    String where = place.words().isEmpty() ? "" : place.words() + ": ";
    return new Refusal(Kind.IMPOSSIBLE, ": " + where + problem + ". " + cure);
  }

  /** Trouble with the file as a whole; the text continues after the file's name. */
  static Refusal ofFile(Kind kind, String rest) {
    return new Refusal(kind, " " + rest);
  }

  CaseFileException in(String file) {
    return new CaseFileException(kind, file + getMessage());
  }
}
