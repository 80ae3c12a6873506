package saddlewright.rules.lower;

import java.util.List;
import java.util.stream.Collectors;
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

/** Where teeth lean to the tongue a bar seated past them stands off the gum. */
public final class LingualBarsPassUprightTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-bars-pass-upright-teeth",
          "A bar in the lingual sulcus passes no more than one tooth that leans to the"
              + " tongue.",
          Severity.SHOULD,
          Source.read(Literature.MANDIBULAR_NOTES + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c : LaidConnector.all(s)) {
      if (!BarObstacles.isInSulcus(c)) {
        continue;
      }
      List<Tooth> leaning = BarObstacles.leaning(s, c);
      if (leaning.isEmpty()) {
        on.judged();
      } else {
        on.finding(c.name(), c.subject())
            .fact("teeth lean over its way in: " + words(leaning))
            .measured(
                leaning.size() == 1 ? "1 leaning tooth" : leaning.size() + " leaning teeth", "none")
            .weighing(leaning.size() == 1 ? Severity.CONSIDER : Severity.SHOULD)
            .remedy(c.label(ConnectorForm.LABIAL_BAR), c.as(ConnectorForm.LABIAL_BAR))
            .done();
      }
    }
  }

  private static String words(List<Tooth> teeth) {
    return teeth.stream().map(Tooth::toString).collect(Collectors.joining(", "));
  }
}
