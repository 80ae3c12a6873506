package saddlewright.rules.upper;

import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A narrow strap must be thick to be stiff, and then it is felt. */
public final class StrapsAreBroadEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "straps-are-broad-enough",
          "A palatal strap is at least 8 mm broad, front to back.",
          Severity.SHOULD,
          Source.read("North American teaching notes: less than 8 mm is a bar"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.STRAP_WIDTH);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_STRAP)) {
      OptionalDouble width = c.measure(Measure.HEIGHT);
      if (width.isEmpty()) {
        continue;
      }
      if (width.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        on.finding(c.name(), c.subject())
            .fact("narrow for a strap")
            .measured(Amount.mm(width.getAsDouble()), Amount.atLeastMm(least))
            .remedy("Return to the usual width", c.shaped(ConnectorShape.DEFAULT))
            .done();
      } else {
        on.upheld(
            "is stiff and thin, being " + Amount.mm(width.getAsDouble()) + " broad", c.subject());
      }
    }
  }
}
