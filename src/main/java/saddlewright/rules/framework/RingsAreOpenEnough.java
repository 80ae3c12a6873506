package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
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
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    double least = s.profile().limit(Quantity.RING_OPENING);
    List<Finding> out = new ArrayList<>();
    for (Laid laid : s.layout().all(MajorConnector.class)) {
      MajorConnector m = (MajorConnector) laid.component();
      OptionalDouble open = laid.measure(Measure.OPENING);
      if (m.form() == ConnectorForm.PALATAL_RING
          && open.isPresent()
          && open.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        out.add(
            finding(Naming.of(m), Subject.of(s.arch(), m))
                .fact("small opening")
                .measured(Amount.mm(open.getAsDouble()), Amount.atLeastMm(least))
                .remedy(
                    "Make it a palatal plate",
                    new DesignEdit.Change(
                        MajorConnector.of(m.id(), ConnectorForm.PALATAL_PLATE, m.span())))
                .done());
      }
    }
    return out;
  }
}
