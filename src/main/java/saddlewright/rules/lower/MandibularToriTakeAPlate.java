package saddlewright.rules.lower;

import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A bar cannot pass a torus without lying on it or standing off it. */
public final class MandibularToriTakeAPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "mandibular-tori-take-a-plate",
          "Mandibular tori are passed by a relieved plate or a labial bar, not by a bar"
              + " in the sulcus.",
          Severity.SHOULD,
          Source.read(Literature.MANDIBULAR_NOTES + "; " + Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER || !BarObstacles.hasTorus(s)) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      if (BarObstacles.isInSulcus(c)) {
        on.finding(c.name(), c.subject())
            .fact("runs on to a mandibular torus")
            .measured("a bar in the sulcus", "a relieved plate, or a bar outside the teeth")
            .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE))
            .done();
      } else {
        on.upheld("passes the torus", c.subject());
      }
    }
  }
}
