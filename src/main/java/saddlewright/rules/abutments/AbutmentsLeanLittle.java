package saddlewright.rules.abutments;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A leaning tooth is pushed over by a load that an upright one carries along its root. */
public final class AbutmentsLeanLittle implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-lean-little",
          "A tooth that bears a rest or a clasp leans by no more than 25 degrees.",
          Severity.SHOULD,
          Source.derived(
              "the sideways part of a load along the path grows with the sine of the lean"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.ABUTMENT_LEAN);
    for (Burden b : Burden.all(s)) {
      if (b.found(s).tilt().isEmpty()) {
        continue;
      }
      Optional<Double> degrees = b.found(s).tiltDegrees();
      if (degrees.isEmpty()) {
        on.unanswered(ChartField.tiltDegrees(b.tooth()), Subject.of(b.tooth()));
      } else if (degrees.get() <= most) {
        on.judged();
      } else {
        on.finding(b.tooth().toString(), Subject.of(b.tooth()))
            .fact(
                "leans so far that a bite pushes it sideways; upright it, crown it, or choose"
                    + " another abutment")
            .measured(Amount.degrees(degrees.get()), "at most " + Amount.degrees(most))
            .done();
      }
    }
  }
}
