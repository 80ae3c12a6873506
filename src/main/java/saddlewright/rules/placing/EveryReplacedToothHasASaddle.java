package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    Tooth first = null;
    Tooth last = null;
    for (Tooth t : Tooth.in(s.arch())) {
      if (s.chart().isReplaced(t) && s.design().saddleAt(t).isEmpty()) {
        first = first == null ? t : first;
        last = t;
      } else if (first != null) {
        out.add(finding(s, Span.of(first, last)));
        first = null;
      }
    }
    if (first != null) {
      out.add(finding(s, Span.of(first, last)));
    }
    return out;
  }

  private Finding finding(Situation s, Span run) {
    return finding(run.toString(), Subject.of(run))
        .fact("to be replaced, but no saddle lies there")
        .measured("0 of " + run.size() + " on a saddle", "all on a saddle")
        .remedy(
            "Place a saddle " + run,
            new DesignEdit.Place(Saddle.of(s.design().freshId("saddle"), run)))
        .done();
  }
}
