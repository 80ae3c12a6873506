package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The front of a horseshoe is all that keeps its sides apart. */
public final class HorseshoeLimbsAreBroadEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "horseshoe-limbs-are-broad-enough",
          "The front limb of a horseshoe is at least 6 mm broad.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    double least = s.profile().limit(Quantity.HORSESHOE_LIMB);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.HORSESHOE)) {
      if (limbs.isEmpty()) {
        continue;
      }
      double width = limbs.get().anterior();
      if (width < least - Clearance.MEASURING_ERROR_MM) {
        on.finding(c.name(), c.subject())
            .fact("narrow in front, where it twists")
            .measured(Amount.mm(width), Amount.atLeastMm(least))
            .remedy("Return to the usual breadth", c.usualLimbs())
            .done();
      } else {
        on.upheld("is " + Amount.mm(width) + " broad in front", c.subject());
      }
    }
  }
}
