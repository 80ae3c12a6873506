package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A border that runs slantwise over the midline is felt by the tongue at every swallow. */
public final class UpperConnectorsCrossTheMidlineSquarely implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-connectors-cross-the-midline-squarely",
          "The rear border of an upper connector crosses the midline at a right angle.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + "; " + Literature.NORTH_AMERICAN_CARDS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    Optional<LaidConnector> connector = LaidConnector.all(s).stream().findFirst();
    if (limbs.isEmpty() || connector.isEmpty()) {
      return;
    }
    LaidConnector c = connector.get();
    double most = s.profile().limit(Quantity.MIDLINE_SKEW);
    double skew = limbs.get().skewDegrees();
    if (skew > most) {
      on.finding(c.name(), c.subject())
          .fact("its rear border runs slantwise over the midline")
          .measured(Math.round(skew) + "° from square", "at most " + Math.round(most) + "°")
          .done();
    } else {
      on.upheld("crosses the midline squarely", c.subject());
    }
  }
}
