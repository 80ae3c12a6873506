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

/** A bar that lies on the floor of the mouth still has to keep off the gum. */
public final class SublingualBarsHaveDepth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "sublingual-bars-have-depth",
          "A sublingual bar is used only where the lingual sulcus is at least 5 mm" + " deep.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.SUBLINGUAL_BAR_DEPTH);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.SUBLINGUAL_BAR)) {
      SulcusDepth depth = SulcusDepth.lingual(c);
      if (depth.isLessThan(least)) {
        on.finding(c.name(), c.subject())
            .fact("shallow lingual sulcus at " + depth.at())
            .measured(Amount.mm(depth.least()), Amount.atLeastMm(least))
            .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE))
            .done();
      } else if (!depth.uncharted().isEmpty()) {
        on.unanswered(ChartField.lingualDepth(depth.uncharted()), c.subject());
      } else if (depth.isCharted()) {
        on.upheld("lies in a sulcus of " + Amount.mm(depth.least()) + " at least", c.subject());
      }
    }
  }
}
