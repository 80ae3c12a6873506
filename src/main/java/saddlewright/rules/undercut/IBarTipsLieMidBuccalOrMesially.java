package saddlewright.rules.undercut;

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
import saddlewright.rules.TerminalAbutment;

/** Behind the bulge of its tooth an I-bar slips free and can jam as the saddle sinks. */
public final class IBarTipsLieMidBuccalOrMesially implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "i-bar-tips-lie-mid-buccal-or-mesially",
          "Beside a free-end saddle the tip of an I-bar lies at the greatest prominence of the"
              + " buccal face or mesial to it.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA + "; teaching slides on the RPI clasp"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (TerminalAbutment a : TerminalAbutment.all(s)) {
      for (Clasp c : StandingClasps.on(s, a.tooth())) {
        if (c.form() != ClaspForm.I_BAR) {
          continue;
        }
        if (c.tip() == Zone.MID_BUCCAL || c.tip() == Zone.MESIOBUCCAL) {
          on.upheld(
              "meets the tooth at its bulge or in front of it, and moves away from it under load",
              Subject.of(s.arch(), c));
          continue;
        }
        SurveyedTooth survey = SurveyedTooth.of(s, a.tooth());
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the tip of the " + Naming.of(c) + " lies behind the bulge of the tooth")
                .measured(
                    ToothNames.zone(c.tooth(), c.tip()),
                    ToothNames.zone(c.tooth(), Zone.MID_BUCCAL)
                        + " or "
                        + ToothNames.zone(c.tooth(), Zone.MESIOBUCCAL));
        for (Zone z : new Zone[] {Zone.MID_BUCCAL, Zone.MESIOBUCCAL}) {
          if (survey.holds(z)) {
            d.remedy(
                "Move the tip to the " + ToothNames.zone(c.tooth(), z) + " undercut",
                new DesignEdit.Change(ReshapedClasp.tipped(c, z)));
          }
        }
        if (survey.holds(Zone.DISTOBUCCAL)) {
          d.remedy(
              "Make it half a T", new DesignEdit.Change(ReshapedClasp.fromBelow(c, c.origin())));
        }
        d.done();
      }
    }
  }
}
