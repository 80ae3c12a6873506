package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Face;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
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

/** The stiff two thirds of an arm cannot pass a bulge: below the survey line they jam. */
public final class RigidPartsStayAboveTheSurveyLine implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rigid-parts-stay-above-the-survey-line",
          "Only the last third of an arm from above lies below the survey line; where it starts, the"
              + " face has no undercut.",
          Severity.SHOULD,
          Source.read(
              Literature.BRITISH_NOTES + "; " + Literature.ANKARA + "; " + Literature.ELIASON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      boolean acrossOneFace =
          c.form() == ClaspForm.CIRCUMFERENTIAL
              || c.form() == ClaspForm.COMBINATION
              || c.form() == ClaspForm.EMBRASURE;
      Zone start = Zone.of(c.tip().face(), Optional.of(c.origin()));
      if (!acrossOneFace || start == c.tip()) {
        continue;
      }
      Optional<Undercut> there = SurveyedTooth.of(s, c.tooth()).at(start);
      if (there.isEmpty() || there.get().depth() <= 0) {
        on.judged();
        continue;
      }
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("the " + Naming.of(c) + " starts where the tooth is undercut")
              .measured(
                  Amount.mm(there.get().depth())
                      + " of undercut "
                      + ToothNames.zone(c.tooth(), start),
                  "none under the stiff part of the arm");
      if (c.tip().end().isPresent() && !c.tooth().isMolar() && c.tip().face() == Face.BUCCAL) {
        d.remedy(
            "Approach from below", new DesignEdit.Change(ReshapedClasp.fromBelow(c, c.origin())));
      }
      d.done();
    }
  }
}
