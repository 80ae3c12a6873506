package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.GapDecision;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/** A place that is not to be restored is no part of the denture. */
public final class SaddlesEndAtReplacedTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "saddles-end-at-replaced-teeth",
          "A saddle begins and ends at a tooth that is to be replaced.",
          Severity.MUST,
          Source.read(Literature.APPLEGATE + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      List<Tooth> over = new ArrayList<>();
      for (Tooth t : List.of(saddle.span().first(), saddle.span().last())) {
        if (isLeft(s, t) && !over.contains(t)) {
          over.add(t);
        }
      }
      if (over.isEmpty()) {
        on.judged();
        continue;
      }
      List<Tooth> teeth = SaddleTeeth.of(s, saddle);
      on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
          .fact("reaches over " + ToothList.of(over) + ", not to be replaced")
          .measured(Amount.of(saddle.span().size(), "place"), teeth.size() + " to be replaced")
          .remedy(
              teeth.isEmpty() ? "Remove the saddle" : "End it at the teeth that are replaced",
              fitted(saddle, teeth))
          .done();
    }
  }

  private static boolean isLeft(Situation s, Tooth t) {
    return s.chart().isLost(t) && s.chart().tooth(t).gap() == GapDecision.NOT_REPLACED;
  }

  private static DesignEdit fitted(Saddle saddle, List<Tooth> teeth) {
    return teeth.isEmpty()
        ? new DesignEdit.Remove(saddle.id())
        : new DesignEdit.Change(
            saddle.withSpan(Span.of(teeth.get(0), teeth.get(teeth.size() - 1))));
  }
}
