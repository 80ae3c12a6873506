package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    double least = s.profile().limit(Quantity.STRAP_WIDTH);
    List<Finding> out = new ArrayList<>();
    for (Laid laid : s.layout().all(MajorConnector.class)) {
      MajorConnector m = (MajorConnector) laid.component();
      OptionalDouble width = laid.measure(Measure.HEIGHT);
      if (m.form() == ConnectorForm.PALATAL_STRAP
          && width.isPresent()
          && width.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        out.add(
            finding(Naming.of(m), Subject.of(s.arch(), m))
                .fact("narrow for a strap")
                .measured(Amount.mm(width.getAsDouble()), Amount.atLeastMm(least))
                .remedy(
                    "Return to the usual width",
                    new DesignEdit.Change(m.withShape(ConnectorShape.DEFAULT)))
                .done());
      }
    }
    return out;
  }
}
