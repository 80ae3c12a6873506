package saddlewright.rules;

import java.util.EnumMap;
import java.util.List;
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
    m.put(
        Quantity.MINOR_CONNECTORS,
        Threshold.derived(4, "one strut for each of four rests")
            .because("every strut across a margin is one more place to clean"));
    return m;
  }

  static Map<String, Weighting> weights() {
    Map<String, Weighting> m = new TreeMap<>();
    m.put(
        "saddles-meet-guide-surfaces",
        Weighting.of(Severity.CONSIDER, Source.read(Literature.OWALL))
            .because("the need to cut guide planes is doubtful"));
    m.put(
        "lifting-saddles-have-an-indirect-retainer",
        Weighting.of(Severity.CONSIDER, Source.read(Literature.OWALL))
            .because("its benefit is doubtful, and every extra part gathers plaque"));
    m.put(
        "gingival-margins-are-left-free",
        Weighting.of(
                Severity.MUST,
                Source.derived("plaque control comes before mechanics (" + Literature.OWALL + ")"))
            .because("free margins are the first of hygienic principles"));
    doubtfulNeed(m);
    gums(m);
    return m;
  }

  /** Covered margins weigh more here than what the covering would do. */
  private static void gums(Map<String, Weighting> m) {
    m.put(
        "designs-are-open",
        Weighting.of(Severity.SHOULD, Source.read(Literature.OWALL))
            .because("plaque control comes before further aids to bracing and retention"));
    m.put(
        "relief-does-not-excuse-cover",
        Weighting.of(Severity.SHOULD, Source.read(Literature.ORR))
            .because("margins under relief were as inflamed as those without"));
    for (String id : List.of("resorbed-free-ends-take-a-plate", "weak-incisors-take-a-plate")) {
      m.put(
          id,
          Weighting.notTaught(Source.read(Literature.OWALL))
              .because("a plate covers every margin that it passes; weak teeth need clean ones"));
    }
  }

  /** Indirect retention and guide planes: the school doubts that they are needed at all. */
  private static void doubtfulNeed(Map<String, Weighting> m) {
    for (String id :
        List.of(
            "class-four-indirect-retainers-lie-far-back",
            "class-one-indirect-retainers-stand-on-both-sides",
            "class-two-indirect-retainers-stand-on-the-dentate-side",
            "doubtful-teeth-are-designed-for-loss",
            "guide-planes-are-tall-enough",
            "guide-surfaces-come-in-pairs",
            "indirect-retainers-lie-far-from-the-axis",
            "plates-are-not-indirect-retainers")) {
      m.put(
          id,
          Weighting.of(Severity.CONSIDER, Source.read(Literature.OWALL))
              .because("the need of indirect retainers and guide planes is doubtful"));
    }
  }
}
