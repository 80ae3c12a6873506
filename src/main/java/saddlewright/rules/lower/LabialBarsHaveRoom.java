package saddlewright.rules.lower;

import saddlewright.chart.ChartField;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.framework.CrossArch;

/** In a shallow vestibule a labial bar strips the gum or is pushed out by the lip. */
public final class LabialBarsHaveRoom implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "labial-bars-have-room",
          "A labial bar is used only where the labial sulcus is at least 8 mm deep.",
          Severity.SHOULD,
          Source.read(Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.LABIAL_SULCUS);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.LABIAL_BAR)) {
      SulcusDepth depth = SulcusDepth.buccal(c);
      if (depth.isLessThan(least)) {
        on.finding(c.name(), c.subject())
            .fact("shallow labial sulcus at " + depth.at())
            .measured(Amount.mm(depth.least()), Amount.atLeastMm(least))
            .remedy(c.label(CrossArch.usualForm(s)), c.as(CrossArch.usualForm(s)))
            .done();
      } else if (!depth.uncharted().isEmpty()) {
        on.unanswered(ChartField.buccalDepth(depth.uncharted()), c.subject());
      } else if (depth.isCharted()) {
        on.upheld("has " + Amount.mm(depth.least()) + " of labial sulcus", c.subject());
      }
    }
  }
}
