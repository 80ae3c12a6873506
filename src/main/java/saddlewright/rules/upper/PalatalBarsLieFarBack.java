package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A thick bar in the front of the palate is in the way of speech. */
public final class PalatalBarsLieFarBack implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "palatal-bars-lie-far-back",
          "A palatal bar lies no farther forward than the second premolars.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_BAR)) {
      if (limbs.isEmpty()) {
        continue;
      }
      double line =
          Math.min(s.form().tooth(Tooth.T15).centre().y(), s.form().tooth(Tooth.T25).centre().y());
      double ahead = line - limbs.get().frontBorder();
      if (ahead > Clearance.MEASURING_ERROR_MM) {
        on.finding(c.name(), c.subject())
            .fact("lies where the tongue speaks")
            .measured(
                Amount.mm(ahead) + " in front of the second premolars", "level with them or behind")
            .remedy(c.label(ConnectorForm.PALATAL_STRAP), c.as(ConnectorForm.PALATAL_STRAP))
            .done();
      } else {
        on.upheld("lies behind the second premolars, out of the way of speech", c.subject());
      }
    }
  }
}
