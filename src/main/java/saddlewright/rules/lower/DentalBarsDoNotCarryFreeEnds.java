package saddlewright.rules.lower;

import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.framework.CrossArch;

/** Alone, a bar on the teeth gives more under free-end saddles than a bar in the sulcus. */
public final class DentalBarsDoNotCarryFreeEnds implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dental-bars-do-not-carry-free-ends",
          "A dental bar is not the only connector of free-end saddles.",
          Severity.SHOULD,
          Source.read(
              "a study of lower free-end frameworks: an enlarged secondary bar as the only connector deforms more; "
                  + Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    int free = AreaPattern.of(s).freeEnds().size();
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.DENTAL_BAR)) {
      if (free > 0) {
        on.finding(c.name(), c.subject())
            .fact("it gives under free-end saddles")
            .measured(Amount.of(free, "free-end saddle"), "none")
            .remedy(c.label(CrossArch.usualForm(s)), c.as(CrossArch.usualForm(s)))
            .done();
      } else {
        on.judged();
      }
    }
  }
}
