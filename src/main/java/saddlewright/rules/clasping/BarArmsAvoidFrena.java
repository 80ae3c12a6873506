package saddlewright.rules.clasping;

import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A frenum lifts a bar arm that crosses it, or is cut by it. */
public final class BarArmsAvoidFrena implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-avoid-frena",
          "No frenum lies in the path of a gingivally approaching arm.",
          Severity.MUST,
          Source.read(Literature.DALHOUSIE + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : BarArms.of(s)) {
      if (s.chart().softTissues().frena().contains(c.tooth())) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("a frenum lies in the path of the " + Naming.of(c))
                .measured("frenum", "no frenum");
        BarArms.offerFromAbove(s, d, c);
        d.done();
      } else {
        on.judged();
      }
    }
  }
}
