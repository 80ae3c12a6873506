package saddlewright.rules.upper;

import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The simplest stiff connector covers the least. */
public final class ShortBoundedSaddlesTakeAStrap implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "short-bounded-saddles-take-a-strap",
          "One or two short bounded saddles behind the canines are joined by a strap.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    boolean small =
        areas.isBoundedBehind()
            && areas.all().size() <= 2
            && areas.longest() <= s.profile().limit(Quantity.SHORT_SADDLE);
    if (s.arch() != Arch.UPPER || !small || PalatalToriAreSpared.isCharted(s)) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      if (c.is(ConnectorForm.PALATAL_STRAP)) {
        on.upheld("joins short bounded saddles with the fewest borders", c.subject());
      } else if (c.is(ConnectorForm.HORSESHOE, ConnectorForm.PALATAL_RING)) {
        on.finding(c.name(), c.subject())
            .fact("more metal and more borders than short bounded saddles need")
            .measured(
                Amount.of(areas.all().size(), "saddle") + " of up to " + areas.longest() + " teeth",
                "a palatal strap")
            .weighing(c.is(ConnectorForm.HORSESHOE) ? Severity.SHOULD : Severity.CONSIDER)
            .remedy(c.label(ConnectorForm.PALATAL_STRAP), c.as(ConnectorForm.PALATAL_STRAP))
            .done();
      } else {
        on.judged();
      }
    }
  }
}
