package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    double good = s.profile().limit(Quantity.CAST_ARM_LENGTH);
    double least = s.profile().limit(Quantity.CAST_ARM_LENGTH_LEAST);
    for (Laid laid : s.layout().all(Clasp.class)) {
      Clasp c = (Clasp) laid.component();
      OptionalDouble length = laid.measure(Measure.ARM_LENGTH);
      boolean stiff =
          c.material() == ClaspMaterial.CAST_COBALT_CHROMIUM && c.form().isOcclusallyApproaching();
      if (stiff
          && length.isPresent()
          && length.getAsDouble() < good - Clearance.MEASURING_ERROR_MM) {
        boolean tooShort = length.getAsDouble() < least - Clearance.MEASURING_ERROR_MM;
        out.add(
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("short cast arm of the " + Naming.of(c))
                .measured(
                    Amount.mm(length.getAsDouble()), Amount.atLeastMm(tooShort ? least : good))
                .weighing(tooShort ? Severity.MUST : Severity.SHOULD)
                .remedy("Make the arm wrought", wrought(c))
                .done());
      }
    }
    return out;
  }

  private static DesignEdit wrought(Clasp c) {
    ClaspForm form = c.form() == ClaspForm.CIRCUMFERENTIAL ? ClaspForm.COMBINATION : c.form();
    return new DesignEdit.Change(
        new Clasp(
            c.id(), c.tooth(), form, c.tip(), c.origin(), ClaspMaterial.WROUGHT_STAINLESS_STEEL));
  }
}
