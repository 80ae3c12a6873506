package saddlewright.rules.lower;

import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The lower connector moves with its saddles, and must not press on the gum when it does. */
public final class LowerConnectorsAreRelieved implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-connectors-are-relieved",
          "A lower connector in the sulcus is relieved from the tissues beneath it.",
          Severity.SHOULD,
          Source.read(Literature.STEWART_NOTES + "; " + Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** One sheet of 32 gauge casting wax (Stewart-type teaching notes, read). */
  private static final double USUAL_MM = 0.25;

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER) {
      return;
    }
    double least = s.profile().limit(Quantity.LOWER_RELIEF);
    Optional<Relief> relief =
        s.design().stream(Relief.class)
            .filter(r -> r.area() == Relief.Area.UNDER_LOWER_CONNECTOR)
            .findFirst();
    for (LaidConnector c : LaidConnector.all(s)) {
      if (c.is(ConnectorForm.DENTAL_BAR)) {
        on.judged();
      } else if (relief.isEmpty()) {
        on.finding(c.name(), c.subject())
            .fact("not relieved from the gum beneath it")
            .measured("0 mm relief", Amount.atLeastMm(least))
            .remedy(
                "Relieve it by " + Amount.mm(USUAL_MM),
                new DesignEdit.Place(relief(s.design().freshId("relief"))))
            .done();
      } else if (relief.get().thickness() < least) {
        on.finding(c.name(), c.subject())
            .fact("thin relief beneath it")
            .measured(Amount.mm(relief.get().thickness()), Amount.atLeastMm(least))
            .remedy(
                "Relieve it by " + Amount.mm(USUAL_MM),
                new DesignEdit.Change(relief(relief.get().id())))
            .done();
      } else {
        on.upheld(
            "keeps the " + c.name() + " off the gum when the saddles sink",
            Subject.of(s.arch(), relief.get()));
      }
    }
  }

  private static Relief relief(ComponentId id) {
    return new Relief(id, Relief.Area.UNDER_LOWER_CONNECTOR, USUAL_MM);
  }
}
