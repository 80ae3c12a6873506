package saddlewright.rules.clasping;

import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** A back-action clasp covers much of its tooth, braces little and springs at its root. */
public final class BackActionClaspsAreAvoided implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "back-action-clasps-are-avoided",
          "A back-action clasp is used only where no plainer clasp will do.",
          Severity.CONSIDER,
          Source.read(Literature.DALHOUSIE + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form() == ClaspForm.BACK_ACTION) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("a back-action clasp covers much of its tooth and braces it little")
                .measured("back-action clasp", "a plainer clasp");
        if (c.tooth().isMolar()) {
          d.remedy(
              "Make it a three-arm clasp", new DesignEdit.Change(ReshapedClasp.castFromAbove(c)));
        } else {
          d.remedy(
              "Make it a wrought arm", new DesignEdit.Change(ReshapedClasp.wroughtFromAbove(c)));
        }
        d.done();
      }
    }
  }
}
