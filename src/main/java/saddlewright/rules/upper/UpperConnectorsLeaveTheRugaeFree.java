package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.AreaPattern;
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

/** The rugae are the tongue's landmarks for speech and taste of texture. */
public final class UpperConnectorsLeaveTheRugaeFree implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-connectors-leave-the-rugae-free",
          "Where no front tooth is replaced, a strap, bar or plate leaves most of the"
              + " rugae uncovered.",
          Severity.CONSIDER,
          Source.read(Literature.OKLAHOMA + "; " + Literature.NORTH_AMERICAN_CARDS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    if (limbs.isEmpty() || AreaPattern.of(s).hasFront()) {
      return;
    }
    double most = s.profile().limit(Quantity.RUGAE_COVER);
    double share = 100 * limbs.get().rugae();
    for (LaidConnector c :
        LaidConnector.all(
            s,
            ConnectorForm.PALATAL_STRAP,
            ConnectorForm.PALATAL_BAR,
            ConnectorForm.PALATAL_PLATE)) {
      if (share > most) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("covers the rugae")
                .measured(Math.round(share) + " % of them", "at most " + Math.round(most) + " %");
        if (c.connector().shape().anteriorBorder().isPresent()) {
          d.remedy("Return to the usual borders", c.usualBorders());
        }
        d.done();
      } else {
        on.upheld(
            share < 1 ? "leaves the rugae free" : "leaves most of the rugae free", c.subject());
      }
    }
  }
}
