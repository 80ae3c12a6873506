package saddlewright.rules.clasping;

import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
import saddlewright.rules.BarInstead;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.WroughtArm;

/** Round a premolar or a canine a cast arm from above is too short to spring. */
public final class SingleRootedTeethTakeArmsFromBelow implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "single-rooted-teeth-take-arms-from-below",
          "A premolar or canine is clasped from below or with a wrought arm, not with a cast arm"
              + " from above.",
          Severity.SHOULD,
          Source.fromMemory(Literature.BDJ_CLASPS + "; it follows from the length of a cast arm"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double good = s.profile().limit(Quantity.CAST_ARM_LENGTH);
    for (Clasp c : StandingClasps.of(s)) {
      if (c.tooth().isMolar()) {
        continue;
      }
      Subject subject = Subject.of(s.arch(), c);
      if (c.form().isGingivallyApproaching()) {
        on.upheld("comes from below, on a longer arm than the crown would give", subject);
        continue;
      }
      if (c.material() != ClaspMaterial.CAST_COBALT_CHROMIUM) {
        on.upheld("springs on a crown that is too small for a cast arm", subject);
        continue;
      }
      if (length(s, c) >= good - Clearance.MEASURING_ERROR_MM) {
        on.judged();
        continue;
      }
      Draft d =
          on.finding(c.tooth().toString(), subject)
              .fact("a cast arm from above on a " + ToothNames.sort(c.tooth()))
              .measured("cast " + Naming.of(c), "a bar from below or a wrought arm");
      WroughtArm wrought = WroughtArm.of(s, c);
      if (!wrought.needsAnotherUndercut()) {
        d.remedy(wrought.label(), wrought.edit());
      }
      BarInstead.of(s, c).ifPresent(e -> d.remedy("Approach from below", e));
      if (wrought.needsAnotherUndercut()) {
        d.remedy(wrought.label(), wrought.edit());
      }
      d.done();
    }
  }

  private static double length(Situation s, Clasp c) {
    return s.layout().find(c.id()).map(l -> l.measure(Measure.ARM_LENGTH).orElse(0)).orElse(0.0);
  }
}
