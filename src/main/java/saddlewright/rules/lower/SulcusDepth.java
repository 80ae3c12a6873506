package saddlewright.rules.lower;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;

/**
 * The charted depth of the sulcus beside the standing teeth in front of the first molars that a
 * connector passes.
 *
 * @param charted depths in mm by tooth
 * @param uncharted the teeth beside which none was charted
 */
record SulcusDepth(Map<Tooth, Double> charted, List<Tooth> uncharted) {
  /** Farther back the sulcus is deeper and the bar runs into a saddle or ends. */
  private static final int LAST_POSITION = 5;

  /** Lip and frena matter to a labial bar as far as the first premolars. */
  private static final int LAST_LABIAL = 4;

  static SulcusDepth lingual(LaidConnector c) {
    return of(c, c.situation().chart().softTissues().lingualDepth(), LAST_POSITION);
  }

  static SulcusDepth buccal(LaidConnector c) {
    return of(c, c.situation().chart().softTissues().buccalDepth(), LAST_LABIAL);
  }

  private static SulcusDepth of(LaidConnector c, Map<Tooth, Double> depths, int last) {
    Map<Tooth, Double> charted = new EnumMap<>(Tooth.class);
    for (Tooth t : c.connector().span().teeth()) {
      if (depths.containsKey(t)) {
        charted.put(t, depths.get(t));
      }
    }
    List<Tooth> wanting =
        c.standing().stream().filter(t -> t.position() <= last && !charted.containsKey(t)).toList();
    return new SulcusDepth(charted, wanting);
  }

  boolean isCharted() {
    return !charted.isEmpty();
  }

  /** The tooth beside which it is shallowest. */
  Tooth at() {
    return shallowest().orElseThrow().getKey();
  }

  /** The least charted depth in mm. */
  double least() {
    return shallowest().orElseThrow().getValue();
  }

  /** Whether a charted depth falls short of the value. */
  boolean isLessThan(double mm) {
    return shallowest().filter(e -> e.getValue() < mm).isPresent();
  }

  private Optional<Map.Entry<Tooth, Double>> shallowest() {
    return charted.entrySet().stream().min(Map.Entry.comparingByValue());
  }

  /** Asks for the lingual depth beside the teeth where it is wanting. */
  void ask(Judging on, LaidConnector c) {
    if (!uncharted.isEmpty()) {
      on.unanswered(ChartField.lingualDepth(uncharted), c.subject());
    }
  }
}
