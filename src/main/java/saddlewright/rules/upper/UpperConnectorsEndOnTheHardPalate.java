package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Metal on the moving soft palate loses its seal, and is gagged on. */
public final class UpperConnectorsEndOnTheHardPalate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-connectors-end-on-the-hard-palate",
          "The rear border of an upper connector lies on the hard palate.",
          Severity.SHOULD,
          Source.read(Literature.NORTH_AMERICAN_CARDS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /**
   * Casts differ by about this much from the junction as it is drawn when it is not charted, mm.
   */
  private static final double UNCERTAIN_MM = 4;

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    Optional<LaidConnector> connector = LaidConnector.all(s).stream().findFirst();
    if (limbs.isEmpty() || connector.isEmpty()) {
      return;
    }
    LaidConnector c = connector.get();
    double before = limbs.get().beforeSoftPalate();
    boolean charted = s.chart().softTissues().palateLimit().isPresent();
    if (before < -Clearance.MEASURING_ERROR_MM) {
      Draft d =
          on.finding(c.name(), c.subject())
              .fact("its rear border runs on to the soft palate")
              .measured(Amount.mm(-before) + " behind its limit", "in front of it");
      if (c.connector().shape().posteriorBorder().isPresent()) {
        d.remedy("Return to the usual borders", c.usualBorders());
      }
      d.done();
    } else if (!charted && before < UNCERTAIN_MM) {
      on.unanswered(ChartField.palateLimit(), c.subject());
    } else {
      on.upheld(
          "ends on the hard palate, " + Amount.mm(before) + " in front of the soft palate",
          c.subject());
    }
  }
}
