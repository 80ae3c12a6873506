package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What a school that puts hygiene first holds otherwise than British teaching. */
final class HygieneFirst {
  private HygieneFirst() {}

  static Map<Quantity, Threshold> limits() {
    Map<Quantity, Threshold> m = new EnumMap<>(Quantity.class);
    m.put(
        Quantity.LOWER_BORDER,
        Threshold.derived(
                4, "the widest that any school asks for (" + Literature.MCCRACKEN_NOTES + ")")
            .because("distance spares a gingival margin, relief over it does not"));
    m.put(
        Quantity.MINOR_SPACING,
        Threshold.derived(6, "the widest that any school asks for (Dutch teaching notes)")
            .because("open embrasures can be cleaned"));
    return m;
  }

  static Map<String, Weighting> weights() {
    Map<String, Weighting> m = new TreeMap<>();
    m.put(
        "lifting-saddles-have-an-indirect-retainer",
        Weighting.of(Severity.CONSIDER, Source.read(Literature.OWALL))
            .because("its benefit is doubtful, and every extra part gathers plaque"));
    return m;
  }
}
