package saddlewright.rules.lower;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.chart.Tilt;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Situation;

/** What stands in the way of a bar in the lingual sulcus. */
final class BarObstacles {
  private BarObstacles() {}

  /** Whether the connector runs as a bar in the lingual sulcus. */
  static boolean isInSulcus(LaidConnector c) {
    return c.is(
        ConnectorForm.LINGUAL_BAR, ConnectorForm.SUBLINGUAL_BAR, ConnectorForm.CONTINUOUS_BAR);
  }

  static boolean hasTorus(Situation s) {
    Set<Torus> tori = s.chart().softTissues().tori();
    return tori.contains(Torus.MANDIBULAR_LEFT) || tori.contains(Torus.MANDIBULAR_RIGHT);
  }

  /** Standing teeth along the connector that lean to the tongue. */
  static List<Tooth> leaning(Situation s, LaidConnector c) {
    return c.standing().stream()
        .filter(t -> s.chart().tooth(t).tilt().equals(Optional.of(Tilt.LINGUAL)))
        .toList();
  }

  /** Whether anything charted, other than the depth of the sulcus, is in the way of a bar. */
  static boolean isBlocked(Situation s, LaidConnector c) {
    return s.chart().softTissues().highLingualFrenum() || hasTorus(s) || !leaning(s, c).isEmpty();
  }
}
