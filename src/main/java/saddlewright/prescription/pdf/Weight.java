package saddlewright.prescription.pdf;

/** A cut of the type face. */
enum Weight {
  REGULAR("Regular"),
  BOLD("Bold");

  private final String file;

  Weight(String file) {
    this.file = file;
  }

  /** As in the name of the font file. */
  String file() {
    return file;
  }
}
