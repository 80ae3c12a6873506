package saddlewright.rules.lower;

import saddlewright.chart.ChartField;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A bar needs its own height, its distance from the gum and air beneath it. */
public final class LingualBarsHaveDepth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-bars-have-depth",
          "A lingual bar is used only where the lingual sulcus is deep enough for it.",
          Severity.MUST,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.LINGUAL_BAR, ConnectorForm.CONTINUOUS_BAR)) {
      SulcusDepth depth = SulcusDepth.lingual(c);
      double good = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH);
      if (depth.isLessThan(good)) {
        double least = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH_LEAST);
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("shallow lingual sulcus at " + depth.at())
                .measured(
                    Amount.mm(depth.least()),
                    Amount.atLeastMm(depth.isLessThan(least) ? least : good))
                .weighing(depth.isLessThan(least) ? Severity.MUST : Severity.SHOULD)
                .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE));
        if (!depth.isLessThan(s.profile().limit(Quantity.SUBLINGUAL_BAR_DEPTH))) {
          d.remedy(c.label(ConnectorForm.SUBLINGUAL_BAR), c.as(ConnectorForm.SUBLINGUAL_BAR));
        }
        d.done();
      } else if (!depth.uncharted().isEmpty()) {
        on.unanswered(ChartField.lingualDepth(depth.uncharted()), c.subject());
      } else if (depth.isCharted()) {
        on.upheld(
            "has room in a lingual sulcus of " + Amount.mm(depth.least()) + " at least",
            c.subject());
      }
    }
  }
}
