package saddlewright.rules.clasping;

import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;
import saddlewright.rules.WroughtArm;

/** A stiff arm in front of a rest beside a free-end saddle works as a crowbar on its tooth. */
public final class FreeEndAbutmentsAreNotLevered implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-abutments-are-not-levered",
          "A cast arm from above is not paired with a rest beside a free-end saddle.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + "; " + Literature.DALHOUSIE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (TerminalAbutment a : TerminalAbutment.all(s)) {
      for (Clasp c : StandingClasps.on(s, a.tooth())) {
        boolean stiff = c.material().isCast() && c.form().isOcclusallyApproaching();
        if (a.isRestedNearOnly() && stiff) {
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("stiff arm and near rest lever the abutment as the base sinks")
              .measured("cast arm with a rest beside the saddle", "a rest away or a wrought arm")
              .remedy(WroughtArm.of(s, c).label(), WroughtArm.of(s, c).edit())
              .done();
        } else {
          on.judged();
        }
      }
    }
  }
}
