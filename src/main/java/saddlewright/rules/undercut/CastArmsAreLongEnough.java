package saddlewright.rules.undercut;

import java.util.OptionalDouble;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
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
import saddlewright.rules.WroughtArm;

/** A short cast arm is too stiff to spring: it bends for good or hurts its tooth. */
public final class CastArmsAreLongEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "cast-arms-are-long-enough",
          "A cast cobalt-chromium arm from above is at least 15 mm long.",
          Severity.MUST,
          Source.read(
              Literature.BRITISH_NOTES
                  + "; a bench study found shorter arms on premolars within safe limits (Owen and"
                  + " Naidoo, Int Dent J 2022;72:58-66)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double good = s.profile().limit(Quantity.CAST_ARM_LENGTH);
    double least = s.profile().limit(Quantity.CAST_ARM_LENGTH_LEAST);
    for (Laid laid : s.layout().all(Clasp.class)) {
      Clasp c = (Clasp) laid.component();
      OptionalDouble measured = laid.measure(Measure.ARM_LENGTH);
      boolean stiff =
          c.material() == ClaspMaterial.CAST_COBALT_CHROMIUM && c.form().isOcclusallyApproaching();
      if (!stiff || measured.isEmpty()) {
        continue;
      }
      double length = measured.getAsDouble();
      if (length >= good - Clearance.MEASURING_ERROR_MM) {
        on.upheld(
            "springs over " + Amount.mm(length) + " of cast cobalt-chromium",
            Subject.of(s.arch(), c));
        continue;
      }
      boolean tooShort = length < least - Clearance.MEASURING_ERROR_MM;
      boolean molar = c.tooth().isMolar();
      WroughtArm wrought = WroughtArm.of(s, c);
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("short cast arm of the " + Naming.of(c))
              .measured(Amount.mm(length), Amount.atLeastMm(tooShort ? least : good))
              .weighing(tooShort ? Severity.MUST : molar ? Severity.CONSIDER : Severity.SHOULD);
      if (!wrought.needsAnotherUndercut()) {
        d.remedy(wrought.label(), wrought.edit());
      }
      if (!molar) {
        BarInstead.of(s, c).ifPresent(e -> d.remedy("Approach from below", e));
      }
      if (wrought.needsAnotherUndercut() && (tooShort || !molar)) {
        d.remedy(wrought.label(), wrought.edit());
      }
      d.done();
    }
  }
}
