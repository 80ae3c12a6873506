package saddlewright.rules.undercut;

import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** A tooth without an undercut is given one, or left without a clasp. */
public final class AbsentUndercutsAreMade implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "absent-undercuts-are-made",
          "A tooth on which the survey found no undercut is clasped only once one is made: composite"
              + " added, enamel recontoured, or a crown.",
          Severity.MUST,
          Source.read(
              "teaching text on survey and path of insertion: no retention from tilt alone; the"
                  + " means from memory of Davenport et al., Tooth preparation, Br Dent J 2001;190"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      SurveyedTooth survey = SurveyedTooth.of(s, c.tooth());
      if (!survey.isCharted(c.tip())) {
        continue;
      }
      if (!survey.undercut().isEmpty()) {
        on.judged();
        continue;
      }
      Subject tooth = Subject.of(c.tooth());
      on.finding(c.tooth().toString(), tooth, Subject.of(s.arch(), c))
          .fact("the survey found no undercut on the tooth for the " + Naming.of(c))
          .measured(
              Amount.mm(0),
              Depths.asked(s, c.material())
                  .map(a -> Amount.mm(a) + ", made with composite or a crown")
                  .orElse("an undercut made with composite or a crown"))
          .remedy("Take the clasp away", new DesignEdit.Remove(c.id()))
          .done();
    }
  }
}
