package saddlewright.prescription.pdf.reading;

/**
 * How much work and memory the reading of one document may take. A file from anywhere is read, and
 * a few thousand bytes can be made that unpack to gigabytes; whatever spends more than any
 * prescription needs is refused.
 */
final class Allowance {
  /** What was spent is more than any prescription needs. */
  static final class Spent extends Exception {
    private static final long serialVersionUID = 1L;

    private Spent() {
      super("more work than any prescription needs", null, false, false);
    }
  }

  private long values;
  private long steps;
  private long unpacked;

  /**
   * @param values numbers, names, texts and the like that may be held
   * @param steps bytes that may be looked at, again and again
   * @param unpacked bytes that may be unpacked
   */
  Allowance(long values, long steps, long unpacked) {
    this.values = values;
    this.steps = steps;
    this.unpacked = unpacked;
  }

  void value() throws Spent {
    if (--values < 0) {
      throw new Spent();
    }
  }

  void steps(long count) throws Spent {
    steps -= count;
    if (steps < 0) {
      throw new Spent();
    }
  }

  void unpacked(long bytes) throws Spent {
    unpacked -= bytes;
    if (unpacked < 0) {
      throw new Spent();
    }
  }
}
