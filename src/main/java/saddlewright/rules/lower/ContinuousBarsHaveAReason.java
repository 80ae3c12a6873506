package saddlewright.rules.lower;

import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A second bar on the teeth adds four edges for the tongue. */
public final class ContinuousBarsHaveAReason implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "continuous-bars-have-a-reason",
          "A continuous bar is added for loose front teeth or to keep free-end saddles"
              + " from lifting.",
          Severity.CONSIDER,
          Source.read(
              "teaching notes on double lingual bars, which disagree: good for splinting and indirect retention, bulky to the tongue; "
                  + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean free = AreaPattern.of(s).hasFreeEnd();
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.CONTINUOUS_BAR)) {
      Optional<Tooth> loose =
          c.standing().stream()
              .filter(Tooth::isAnterior)
              .filter(t -> s.chart().tooth(t).mobility().filter(g -> g > 0).isPresent())
              .findFirst();
      if (loose.isPresent()) {
        on.upheld("splints the loose " + loose.get(), c.subject());
      } else if (free) {
        on.upheld("keeps the free-end saddles from lifting", c.subject());
      } else {
        on.finding(c.name(), c.subject())
            .fact("its upper limb has nothing to do")
            .measured(
                "no loose front tooth charted, no free-end saddle", "a reason for a second bar")
            .remedy(c.label(ConnectorForm.LINGUAL_BAR), c.as(ConnectorForm.LINGUAL_BAR))
            .done();
      }
    }
  }
}
