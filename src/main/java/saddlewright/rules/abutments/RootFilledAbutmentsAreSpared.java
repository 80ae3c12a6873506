package saddlewright.rules.abutments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Condition;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.TerminalAbutment;

/** A root-filled tooth at the end of a free-end saddle is lost far more often than a vital one. */
public final class RootFilledAbutmentsAreSpared implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "root-filled-abutments-are-spared",
          "The last tooth before a free-end saddle is clasped only with care when it is"
              + " root-filled.",
          Severity.CONSIDER,
          Source.read(Literature.NISSER + ": loss 3.5 times as frequent"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Burden> uncharted = new ArrayList<>();
    for (Burden b : Burden.all(s)) {
      if (!b.isClasped() || TerminalAbutment.at(s, b.tooth()).isEmpty()) {
        continue;
      }
      Optional<Condition> found = b.found(s).condition();
      if (found.isEmpty()) {
        uncharted.add(b);
      } else if (found.get() == Condition.ROOT_FILLED) {
        on.finding(b.tooth().toString(), Subject.of(b.tooth()))
            .fact("root-filled, and clasped at the end of a free-end saddle; plan for its loss")
            .measured("a root-filled terminal abutment", "a vital one")
            .done();
      } else {
        on.judged();
      }
    }
    Burden.ask(uncharted, ChartField::condition, on);
  }
}
