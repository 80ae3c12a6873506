package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What a school that puts hygiene first holds otherwise than British teaching. */
final class HygieneFirst {
  private HygieneFirst() {}

  static Map<Quantity, Threshold> limits() {
    return new EnumMap<>(Quantity.class);
  }

  static Map<String, Weighting> weights() {
    Map<String, Weighting> m = new TreeMap<>();
    m.put(
        "lifting-saddles-have-an-indirect-retainer",
        Weighting.of(Severity.CONSIDER, Source.read(Literature.OWALL)));
    return m;
  }
}
