package saddlewright.rules.upper;

import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A horseshoe is the least stiff of the palatal connectors, so that it wants a reason. */
public final class HorseshoesSuitToriAndFrontSaddles implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "horseshoes-suit-tori-and-front-saddles",
          "A horseshoe is used for a torus, for front saddles, or for several short" + " saddles.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** From this many saddles on they count as several (British notes give no figure; derived). */
  private static final int SEVERAL = 3;

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.HORSESHOE)) {
      if (PalatalToriAreSpared.isCharted(s)) {
        on.upheld("goes round the torus", c.subject());
      } else if (areas.hasFront()) {
        on.upheld("carries the front saddle", c.subject());
      } else if (areas.all().size() >= SEVERAL) {
        on.upheld("joins several short saddles", c.subject());
      } else if (!areas.all().isEmpty()) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("nothing calls for it")
                .measured(
                    "no torus, no front saddle, " + Amount.of(areas.all().size(), "saddle"),
                    "a torus, a front saddle or " + SEVERAL + " saddles");
        if (areas.isBoundedBehind()) {
          d.remedy(c.label(ConnectorForm.PALATAL_STRAP), c.as(ConnectorForm.PALATAL_STRAP));
        } else {
          d.remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE));
        }
        d.remedy(c.label(ConnectorForm.PALATAL_RING), c.as(ConnectorForm.PALATAL_RING)).done();
      }
    }
  }
}
