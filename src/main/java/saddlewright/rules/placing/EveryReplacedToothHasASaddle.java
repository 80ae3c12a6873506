package saddlewright.rules.placing;

import java.util.List;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/** A tooth that is to be replaced needs a saddle to stand on. */
public final class EveryReplacedToothHasASaddle implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "every-replaced-tooth-has-a-saddle",
          "Every tooth that is to be replaced lies in a saddle.",
          Severity.MUST,
          Source.commonPractice("first step of design: outline the saddles"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.chart().standing().isEmpty()) {
      return; // A complete denture takes no saddles on a framework.
    }
    Tooth first = null;
    Tooth last = null;
    for (Tooth t : Tooth.in(s.arch())) {
      if (s.chart().isReplaced(t) && s.design().saddleAt(t).isEmpty()) {
        first = first == null ? t : first;
        last = t;
      } else if (first != null) {
        find(s, Span.of(first, last), on);
        first = null;
      }
    }
    if (first != null) {
      find(s, Span.of(first, last), on);
    }
    for (Saddle saddle : s.design().all(Saddle.class)) {
      List<Tooth> teeth = SaddleTeeth.of(s, saddle);
      if (!teeth.isEmpty()) {
        on.upheld("replaces " + ToothList.of(teeth), Subject.of(s.arch(), saddle));
      }
    }
  }

  private static void find(Situation s, Span run, Judging on) {
    on.finding(run.toString(), Subject.of(run))
        .fact(fact(s, run))
        .measured("0 of " + run.size() + " on a saddle", "all on a saddle")
        .remedy(
            "Place a saddle " + run,
            new DesignEdit.Place(Saddle.of(s.design().freshId("saddle"), run)))
        .done();
  }

  private static String fact(Situation s, Span run) {
    boolean implant =
        run.teeth().stream().anyMatch(t -> s.chart().tooth(t).status() == ToothStatus.IMPLANT);
    return "to be replaced, but no saddle lies there"
        + (implant ? "; chart an implant that bears a crown of its own as not replaced" : "");
  }
}
