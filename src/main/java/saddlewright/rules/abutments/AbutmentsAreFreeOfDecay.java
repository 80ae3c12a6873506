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

/** Metal over untreated decay hides it and feeds it. */
public final class AbutmentsAreFreeOfDecay implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-are-free-of-decay",
          "No part of the denture is planned on a tooth with untreated decay.",
          Severity.MUST,
          Source.read(Literature.ANKARA + "; " + Literature.MOUTH_PREPARATION));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Burden> uncharted = new ArrayList<>();
    for (Burden b : Burden.all(s)) {
      Optional<Condition> found = b.found(s).condition();
      if (found.isEmpty()) {
        uncharted.add(b);
      } else if (found.get() == Condition.CARIOUS) {
        on.finding(b.tooth().toString(), Subject.of(b.tooth()))
            .fact("decayed, and the denture is planned on it; treat it first")
            .measured("untreated decay", "a sound or restored crown")
            .done();
      } else {
        on.judged();
      }
    }
    Burden.ask(uncharted, ChartField::condition, on);
  }
}
