package saddlewright.rules.retention;

import java.util.List;
import saddlewright.dentition.Side;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Clasps on one side leave the other side free to lift. */
public final class ClaspsHoldBothSides implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasps-hold-both-sides",
          "A denture with clasps has at least one on each side of the arch.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.WESTERN_AUSTRALIA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Clasp> clasps = s.design().all(Clasp.class);
    if (clasps.isEmpty()) {
      return List.of();
    }
    for (Side side : Side.values()) {
      boolean teeth =
          s.chart().standing().stream().anyMatch(t -> t.side() == side && !t.isIncisor());
      if (teeth && clasps.stream().noneMatch(c -> c.tooth().side() == side)) {
        return List.of(
            finding(s.arch().code() + " denture", Subject.of(s.arch()))
                .fact("no clasp on the patient's " + (side == Side.RIGHT ? "right" : "left"))
                .measured("clasps on 1 side", "clasps on both sides")
                .done());
      }
    }
    return List.of();
  }
}
