package saddlewright.prescription.pdf;

import java.util.Optional;

/** A type face of the document; a letter is set in the first that has it. */
enum Face {
  /** Latin, Greek, Cyrillic and Hebrew; the face of the window too. */
  LIBERATION_SANS("/liberation/LiberationSans-Regular.ttf", "/liberation/LiberationSans-Bold.ttf"),
  /** Arabic, Armenian, Georgian, Lao and many signs; read only when a text needs it. */
  DEJAVU_SANS("/saddlewright/face/DejaVuSans.ttf", "/saddlewright/face/DejaVuSans-Bold.ttf");

  private final String[] files;
  private final Cut[] cuts = new Cut[Weight.values().length];

  /** Font files in the order of the weights. */
  Face(String... files) {
    this.files = files;
  }

  /** A weight of this face, read when it is first asked for. */
  Cut cut(Weight weight) {
    // A cut never changes, so that one may be taken without waiting once it stands here.
    Cut cut = cuts[weight.ordinal()];
    return cut != null ? cut : read(weight);
  }

  private synchronized Cut read(Weight weight) {
    int i = weight.ordinal();
    if (cuts[i] == null) {
      cuts[i] = Cut.read(files[i]);
    }
    return cuts[i];
  }

  /** The face that has a letter in both its cuts; none for what cannot be printed. */
  static Optional<Face> of(int codePoint) {
    for (Face f : values()) {
      if (f.has(codePoint)) {
        return Optional.of(f);
      }
    }
    return Optional.empty();
  }

  boolean has(int codePoint) {
    return cut(Weight.REGULAR).has(codePoint) && cut(Weight.BOLD).has(codePoint);
  }
}
