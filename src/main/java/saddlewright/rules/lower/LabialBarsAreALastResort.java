package saddlewright.rules.lower;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.framework.CrossArch;

/** A bar before the teeth is long, felt and seen. */
public final class LabialBarsAreALastResort implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "labial-bars-are-a-last-resort",
          "A labial bar is used only where teeth leaning to the tongue or tori bar the"
              + " lingual way.",
          Severity.SHOULD,
          Source.read(Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.LABIAL_BAR)) {
      List<Tooth> leaning = BarObstacles.leaning(s, c);
      if (!leaning.isEmpty()) {
        on.upheld("passes outside " + leaning.get(0) + ", which leans to the tongue", c.subject());
      } else if (BarObstacles.hasTorus(s)) {
        on.upheld("passes outside a torus", c.subject());
      } else {
        on.finding(c.name(), c.subject())
            .fact("nothing bars the lingual way")
            .measured("no torus, no tooth leaning to the tongue", "one of them")
            .remedy(c.label(CrossArch.usualForm(s)), c.as(CrossArch.usualForm(s)))
            .done();
      }
    }
  }
}
