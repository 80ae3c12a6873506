package saddlewright.rules.clasping;

import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Subject;
import saddlewright.rules.BarInstead;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;
import saddlewright.rules.WroughtArm;

/** As a free-end saddle sinks, the clasp at its start must give way and not twist the tooth. */
public final class FreeEndAbutmentsTakeReleasingClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-abutments-take-releasing-clasps",
          "The terminal abutment of a free-end saddle bears a clasp that lets go as the saddle"
              + " sinks: an RPI or RPA set, a wrought arm or a T-bar.",
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
        Subject subject = Subject.of(s.arch(), c);
        boolean fromBelow = c.form().isGingivallyApproaching();
        if (fromBelow && a.isRestedNearOnly()) {
          on.judged();
        } else if (fromBelow || c.material().isWrought() || isRpa(s, a, c)) {
          on.upheld(
              fromBelow
                  ? "moves down and off the tooth as " + Naming.of(a.saddle()) + " sinks"
                  : "gives way as " + Naming.of(a.saddle()) + " sinks",
              subject);
        } else if (a.isRestedNearOnly() || !c.material().isCast()) {
          on.judged();
        } else {
          blame(s, on, a, c);
        }
      }
    }
  }

  private static void blame(Situation s, Judging on, TerminalAbutment a, Clasp c) {
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("a stiff clasp beside a free-end saddle twists its tooth as the saddle sinks")
            .measured("cast " + Naming.of(c), "an RPI or RPA set, a wrought arm or a T-bar");
    BarInstead.of(s, c).ifPresent(e -> d.remedy("Approach from below", e));
    d.remedy(WroughtArm.of(s, c).label(), WroughtArm.of(s, c).edit());
    d.done();
  }

  /** An arm from above with a rest away from the saddle and a plate beside it. */
  private static boolean isRpa(Situation s, TerminalAbutment a, Clasp c) {
    return c.form() == ClaspForm.CIRCUMFERENTIAL && a.isRestedAway() && a.hasGuidePlate(s);
  }
}
