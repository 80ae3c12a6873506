package saddlewright.prescription;

import java.util.List;
import java.util.stream.Collectors;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;

/** Tooth numbers written in a notation. */
public final class ToothWords {
  private ToothWords() {}

  /** Such as 36–38, or 36 alone. */
  static String range(Tooth first, Tooth last, Notation notation) {
    return first == last
        ? notation.format(first)
        : notation.format(first) + "–" + notation.format(last);
  }

  /** Such as "35, 36 and 37". */
  public static String list(List<Tooth> teeth, Notation notation) {
    if (teeth.size() < 2) {
      return teeth.stream().map(notation::format).collect(Collectors.joining());
    }
    return teeth.subList(0, teeth.size() - 1).stream()
            .map(notation::format)
            .collect(Collectors.joining(", "))
        + " and "
        + notation.format(teeth.get(teeth.size() - 1));
  }

  /** Name of a notation as it is printed on every document, for a number means nothing without. */
  public static String name(Notation notation) {
    return switch (notation) {
      case FDI -> "ISO 3950 (FDI)";
      case PALMER -> "Palmer, with UR, UL, LL, LR for the corners";
      case UNIVERSAL -> "the Universal system (1–32)";
    };
  }
}
