package saddlewright.rules.lower;

import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The height of a bar is what keeps it from twisting. */
public final class BarsAreHighEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bars-are-high-enough",
          "A lingual or dental bar is at least 4 mm high.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.BAR_HEIGHT);
    for (LaidConnector c :
        LaidConnector.all(
            s, ConnectorForm.LINGUAL_BAR, ConnectorForm.CONTINUOUS_BAR, ConnectorForm.DENTAL_BAR)) {
      OptionalDouble height = c.measure(Measure.HEIGHT);
      if (height.isEmpty()) {
        continue;
      }
      if (height.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        on.finding(c.name(), c.subject())
            .fact("low, so that it bends")
            .measured(Amount.mm(height.getAsDouble()), Amount.atLeastMm(least))
            .remedy("Return to the usual height", c.usualHeight())
            .done();
      } else {
        on.upheld("is " + Amount.mm(height.getAsDouble()) + " high", c.subject());
      }
    }
  }
}
