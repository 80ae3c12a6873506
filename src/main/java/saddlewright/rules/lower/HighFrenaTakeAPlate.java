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

/** A high lingual frenum lies just where a bar would pass. */
public final class HighFrenaTakeAPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "high-frena-take-a-plate",
          "A high lingual frenum is passed by a plate or dental bar, not by a bar in"
              + " the sulcus.",
          Severity.SHOULD,
          Source.read(Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER || !s.chart().softTissues().highLingualFrenum()) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      if (BarObstacles.isInSulcus(c)) {
        on.finding(c.name(), c.subject())
            .fact("crosses a high lingual frenum")
            .measured("a bar in the sulcus", "a lingual plate or dental bar")
            .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE))
            .done();
      } else {
        on.upheld("clears the high lingual frenum", c.subject());
      }
    }
  }
}
