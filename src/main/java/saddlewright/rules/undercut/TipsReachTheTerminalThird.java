package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.dentition.Face;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** Only the last third of an arm from above springs, and only that may lie in an undercut. */
public final class TipsReachTheTerminalThird implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tips-reach-the-terminal-third",
          "The tip of an arm from above ends in the far third of the face that the arm crosses.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form().isGingivallyApproaching() || c.form() == ClaspForm.BACK_ACTION) {
        continue;
      }
      if (c.tip().end().isPresent()) {
        on.judged();
        continue;
      }
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("the " + Naming.of(c) + " ends in the middle of the face")
              .measured(
                  ToothNames.zone(c.tooth(), c.tip()),
                  "the " + ToothNames.end(c.origin().opposite()) + " third");
      Zone far = Zone.of(c.tip().face(), Optional.of(c.origin().opposite()));
      if (SurveyedTooth.of(s, c.tooth()).holds(far)) {
        d.remedy(
            "Move the tip to the " + ToothNames.zone(c.tooth(), far) + " undercut",
            new DesignEdit.Change(ReshapedClasp.tipped(c, far)));
      }
      if (!c.tooth().isMolar() && c.tip().face() == Face.BUCCAL) {
        d.remedy(
            "Approach from below", new DesignEdit.Change(ReshapedClasp.fromBelow(c, c.origin())));
      }
      d.done();
    }
  }
}
