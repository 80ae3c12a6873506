package saddlewright.rules.clasping;

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

/** The second foot of a T covers tooth and gingiva without holding anything. */
public final class FullTBarsAreAvoided implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "full-t-bars-are-avoided",
          "Of a T-bar only the foot that lies in the undercut is kept.",
          Severity.CONSIDER,
          Source.read(Literature.DALHOUSIE + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form() == ClaspForm.T_BAR) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("a full T covers more of the tooth than it holds")
            .measured("2 feet", "1 foot in the undercut")
            .remedy(
                "Keep half of the T",
                new DesignEdit.Change(
                    new Clasp(
                        c.id(), c.tooth(), ClaspForm.HALF_T, c.tip(), c.origin(), c.material())))
            .done();
      } else if (c.form() == ClaspForm.HALF_T) {
        on.upheld("keeps to the foot that lies in the undercut", Subject.of(s.arch(), c));
      }
    }
  }
}
