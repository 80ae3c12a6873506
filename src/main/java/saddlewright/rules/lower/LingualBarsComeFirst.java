package saddlewright.rules.lower;

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

/** Where a plain bar fits, nothing else is as clean or as little felt. */
public final class LingualBarsComeFirst implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-bars-come-first",
          "Where the lingual sulcus is deep enough, a lingual bar is chosen before a"
              + " sublingual or dental bar.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.MCCRACKEN_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double good = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH);
    for (LaidConnector c : LaidConnector.all(s)) {
      SulcusDepth depth = SulcusDepth.lingual(c);
      if (c.is(ConnectorForm.LINGUAL_BAR)) {
        if (depth.isCharted() && !depth.isLessThan(good)) {
          on.upheld("leaves teeth and gums alone", c.subject());
        } else {
          on.judged();
        }
      } else if (c.is(ConnectorForm.SUBLINGUAL_BAR, ConnectorForm.DENTAL_BAR)) {
        weigh(s, c, depth, good, on);
      }
    }
  }

  private static void weigh(
      Situation s, LaidConnector c, SulcusDepth depth, double good, Judging on) {
    if (depth.isLessThan(good)) {
      on.upheld("is a way out of a sulcus of " + Amount.mm(depth.least()), c.subject());
    } else if (BarObstacles.isBlocked(s, c)) {
      on.upheld("is a way round what a lingual bar would meet", c.subject());
    } else if (!depth.isCharted()) {
      depth.ask(on, c);
    } else {
      on.finding(c.name(), c.subject())
          .fact("a lingual bar would fit")
          .measured(
              Amount.mm(depth.least()) + " of lingual sulcus",
              "less than " + Amount.mm(good) + ", or something in the way of a bar")
          .remedy(c.label(ConnectorForm.LINGUAL_BAR), c.as(ConnectorForm.LINGUAL_BAR))
          .done();
    }
  }
}
