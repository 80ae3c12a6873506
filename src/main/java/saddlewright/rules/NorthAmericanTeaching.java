package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What North American teaching holds otherwise than British teaching. */
final class NorthAmericanTeaching {
  private NorthAmericanTeaching() {}

  static Map<Quantity, Threshold> limits() {
    Map<Quantity, Threshold> m = new EnumMap<>(Quantity.class);
    m.put(
        Quantity.UNDERCUT_WROUGHT_STEEL,
        Threshold.read(0.50, Literature.STEWART_NOTES + ": 18 gauge wrought round wire"));
    return m;
  }

  static Map<String, Weighting> weights() {
    Map<String, Weighting> m = new TreeMap<>();
    m.put(
        "cast-arms-are-long-enough",
        Weighting.of(
            Severity.CONSIDER,
            Source.read(Literature.OKLAHOMA + ": cast circumferential arms on premolars")));
    return m;
  }
}
