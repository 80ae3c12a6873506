package saddlewright.rules.undercut;

import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;
import saddlewright.rules.TerminalAbutment;

/** An I-bar touches the tooth at one place, so the undercut must be there. */
public final class IBarsHaveTheirUndercut implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "i-bars-have-their-undercut",
          "Beside a free-end saddle an I-bar is used where the undercut lies mid-buccally or"
              + " mesiobuccally; one that lies distobuccally alone takes a T or half a T.",
          Severity.SHOULD,
          Source.read("North American teaching cards; " + Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (TerminalAbutment a : TerminalAbutment.all(s)) {
      SurveyedTooth survey = SurveyedTooth.of(s, a.tooth());
      boolean there = survey.holds(Zone.MID_BUCCAL) || survey.holds(Zone.MESIOBUCCAL);
      for (Clasp c : StandingClasps.on(s, a.tooth())) {
        if (c.form() != ClaspForm.I_BAR) {
          continue;
        }
        if (there || !survey.holds(Zone.DISTOBUCCAL)) {
          on.judged();
          continue;
        }
        Clasp half = Clasp.of(c.id(), c.tooth(), ClaspForm.HALF_T, Zone.DISTOBUCCAL, c.origin());
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the only undercut lies behind the place of an I-bar")
            .measured(
                ToothNames.zone(c.tooth(), Zone.DISTOBUCCAL) + " undercut alone",
                "one mid-buccally or mesiobuccally, or half a T")
            .remedy("Make it half a T", new DesignEdit.Change(half))
            .done();
      }
    }
  }
}
