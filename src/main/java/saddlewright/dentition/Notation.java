package saddlewright.dentition;

/**
 * A way of writing tooth numbers for people. ISO 3950 (FDI) is what is stored; the others are
 * formats only.
 */
public enum Notation {
  FDI {
    @Override
    public String format(Tooth tooth) {
      return tooth.toString();
    }
  },
  /** Quadrant and number from the midline, the corner sign written as UR, UL, LL or LR. */
  PALMER {
    @Override
    public String format(Tooth tooth) {
      return (tooth.arch() == Arch.UPPER ? "U" : "L")
          + (tooth.side() == Side.RIGHT ? "R" : "L")
          + tooth.position();
    }
  },
  /** 1 to 16 along the upper arch from the patient's right, 17 to 32 back along the lower. */
  UNIVERSAL {
    @Override
    public String format(Tooth tooth) {
      return Integer.toString(tooth.arch() == Arch.UPPER ? tooth.place() + 1 : 32 - tooth.place());
    }
  };

  public abstract String format(Tooth tooth);

  /** The tooth written so; an empty result when the text names none. */
  public java.util.Optional<Tooth> parse(String text) {
    String wanted = text.strip().toUpperCase(java.util.Locale.ROOT);
    for (Tooth tooth : Tooth.values()) {
      if (format(tooth).equals(wanted)) {
        return java.util.Optional.of(tooth);
      }
    }
    return java.util.Optional.empty();
  }
}
