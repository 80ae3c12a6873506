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

/** A U of metal that is open behind spreads when a free end is loaded. */
public final class HorseshoesDoNotCarryFreeEnds implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "horseshoes-do-not-carry-free-ends",
          "A horseshoe does not join free-end saddles.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.BEN_UR));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    int free = AreaPattern.of(s).freeEnds().size();
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.HORSESHOE)) {
      if (free == 0) {
        on.judged();
        continue;
      }
      boolean torus = PalatalToriAreSpared.isCharted(s);
      Draft d =
          on.finding(c.name(), c.subject())
              .fact("it spreads under free-end saddles")
              .measured(Amount.of(free, "free-end saddle"), "none")
              .weighing(torus ? Severity.CONSIDER : Severity.SHOULD)
              .remedy(c.label(ConnectorForm.PALATAL_RING), c.as(ConnectorForm.PALATAL_RING));
      if (!torus) {
        d.remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE));
      }
      d.done();
    }
  }
}
