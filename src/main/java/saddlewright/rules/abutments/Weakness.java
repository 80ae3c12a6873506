package saddlewright.rules.abutments;

import java.util.Optional;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** What makes a tooth too weak to be relied on alone, as charted. */
final class Weakness {
  private Weakness() {}

  /** In words, the gravest first; empty for a tooth without such a finding. */
  static Optional<String> of(Situation s, Tooth tooth) {
    ToothFindings f = s.chart().tooth(tooth);
    if (f.mobility().isPresent() && f.mobility().get() >= s.profile().limit(Quantity.MOBILITY)) {
      return Optional.of("mobility grade " + f.mobility().get());
    }
    if (f.crownRoot().isPresent()
        && f.crownRoot().get() >= s.profile().limit(Quantity.CROWN_ROOT)) {
      return Optional.of("a short root");
    }
    if (f.boneSupportPercent().isPresent()
        && f.boneSupportPercent().get() < s.profile().limit(Quantity.BONE_SUPPORT)) {
      return Optional.of("little bone");
    }
    return f.doubtful() ? Optional.of("a doubtful outlook") : Optional.empty();
  }
}
