package saddlewright.rules.upper;

import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A small opening gains nothing and adds borders for the tongue. */
public final class RingsAreOpenEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rings-are-open-enough",
          "The opening of a palatal ring is at least 15 mm, front to back.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.RING_OPENING);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_RING)) {
      OptionalDouble open = c.measure(Measure.OPENING);
      if (open.isPresent() && open.getAsDouble() >= least - Clearance.MEASURING_ERROR_MM) {
        on.upheld("leaves " + Amount.mm(open.getAsDouble()) + " of the palate free", c.subject());
      } else {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact(open.isPresent() ? "small opening" : "its opening has closed")
                .measured(Amount.mm(open.orElse(0)), Amount.atLeastMm(least));
        if (!c.connector().shape().equals(ConnectorShape.DEFAULT)) {
          d.remedy("Return to the usual borders", c.usualLimbs());
        }
        if (!PalatalToriAreSpared.isCharted(s)) {
          d.remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE));
        }
        d.done();
      }
    }
  }
}
