package saddlewright.rules.clasping;

import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
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

/** A bar arm that runs close to the margin traps food and inflames it. */
public final class BarArmsClearTheGingivalMargin implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-clear-the-gingival-margin",
          "A gingivally approaching arm runs at least 3 mm below the gingival margin.",
          Severity.MUST,
          Source.read(Literature.ELIASON + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.BAR_ARM_MARGIN);
    for (Clasp c : BarArms.of(s)) {
      Optional<Laid> laid = s.layout().find(c.id());
      OptionalDouble clear =
          laid.map(l -> l.measure(Measure.MARGIN_CLEARANCE)).orElse(OptionalDouble.empty());
      if (clear.isEmpty()) {
        continue;
      }
      if (clear.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " runs close to the gingival margin")
                .measured(Amount.mm(clear.getAsDouble()), Amount.atLeastMm(least));
        BarArms.offerFromAbove(s, d, c);
        d.done();
      } else {
        on.upheld(
            "runs " + Amount.mm(clear.getAsDouble()) + " below the gingival margin",
            Subject.of(s.arch(), c));
      }
    }
  }
}
