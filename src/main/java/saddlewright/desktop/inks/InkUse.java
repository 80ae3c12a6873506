package saddlewright.desktop.inks;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import saddlewright.drawing.Ink;

/**
 * What an ink is used for, and the surfaces on which it has to be seen.
 *
 * @param kind whether it fills, draws or writes
 * @param grounds the surfaces that what it draws stands on; empty for a surface
 */
record InkUse(Kind kind, List<Ink> grounds) {

  /** Whether an ink fills, draws or writes. */
  enum Kind {
    /** Filled areas, on which other inks stand. */
    SURFACE(1),
    /** Lines and signs: WCAG 2.2, success criterion 1.4.11, non-text contrast. */
    LINE(3),
    /** Words and numbers: WCAG 2.2, success criterion 1.4.3, contrast (minimum). */
    WORDS(4.5);

    private final double least;

    Kind(double least) {
      this.least = least;
    }

    /** The least contrast with its ground. */
    double least() {
      return least;
    }
  }

  private static final Map<Ink, InkUse> ALL = new EnumMap<>(Ink.class);

  static {
    for (Ink surface :
        List.of(Ink.PAPER, Ink.ENAMEL, Ink.ENAMEL_SHADE, Ink.MUCOSA, Ink.METAL, Ink.ACRYLIC)) {
      ALL.put(surface, new InkUse(Kind.SURFACE, List.of()));
    }
    line(Ink.TOOTH_LINE, Ink.ENAMEL, Ink.ENAMEL_SHADE);
    line(Ink.FISSURE, Ink.ENAMEL);
    // Teeth that are not there and their numbers; faint on purpose, as WCAG allows what is
    // inactive.
    line(Ink.FAINT, Ink.PAPER);
    line(Ink.GINGIVA, Ink.MUCOSA);
    line(Ink.ANATOMY, Ink.MUCOSA);
    line(Ink.METAL_LINE, Ink.METAL, Ink.PAPER);
    line(Ink.REST, Ink.ENAMEL);
    line(Ink.RETENTIVE, Ink.ENAMEL, Ink.MUCOSA);
    line(Ink.RECIPROCAL, Ink.ENAMEL, Ink.MUCOSA);
    line(Ink.GUIDE, Ink.ENAMEL);
    line(Ink.INDIRECT, Ink.ENAMEL);
    line(Ink.ACRYLIC_LINE, Ink.ACRYLIC);
    line(Ink.MESH, Ink.ACRYLIC);
    line(Ink.RELIEF, Ink.METAL, Ink.MUCOSA);
    line(Ink.EXTRACTION, Ink.ENAMEL);
    words(Ink.UNDERCUT, Ink.PAPER);
    words(Ink.LABEL, Ink.PAPER);
    words(Ink.NOTE, Ink.PAPER, Ink.ENAMEL);
    words(Ink.NUMBER, Ink.PAPER);
    for (Ink sign : List.of(Ink.FINDING, Ink.CAUTION, Ink.ADVICE, Ink.QUESTION)) {
      words(sign, Ink.PAPER);
    }
  }

  private static void line(Ink ink, Ink... grounds) {
    ALL.put(ink, new InkUse(Kind.LINE, List.of(grounds)));
  }

  private static void words(Ink ink, Ink... grounds) {
    ALL.put(ink, new InkUse(Kind.WORDS, List.of(grounds)));
  }

  static InkUse of(Ink ink) {
    return ALL.get(ink);
  }
}
