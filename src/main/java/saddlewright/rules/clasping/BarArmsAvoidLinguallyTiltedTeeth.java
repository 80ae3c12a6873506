package saddlewright.rules.clasping;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Below a crown that leans inwards a bar arm stands far off the tissue. */
public final class BarArmsAvoidLinguallyTiltedTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-avoid-lingually-tilted-teeth",
          "No gingivally approaching arm is used on a tooth that is strongly tilted lingually.",
          Severity.MUST,
          Source.read(Literature.DALHOUSIE + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.BAR_ARM_TILT);
    for (Clasp c : BarArms.of(s)) {
      ToothFindings f = s.chart().tooth(c.tooth());
      if (!f.tilt().equals(Optional.of(Tilt.LINGUAL))) {
        continue;
      }
      if (f.tiltDegrees().isEmpty()) {
        on.unanswered(ChartField.tiltDegrees(c.tooth()), Subject.of(s.arch(), c));
      } else if (f.tiltDegrees().get() > most) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " would stand off the tissue below a leaning crown")
                .measured(
                    "tilted lingually by " + Math.round(f.tiltDegrees().get()) + "°",
                    "at most " + Math.round(most) + "°");
        BarArms.offerFromAbove(s, d, c);
        d.done();
      } else {
        on.judged();
      }
    }
  }
}
