package saddlewright.rules.lower;

import java.util.List;
import saddlewright.design.ConnectorForm;
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

/** A plate covers every margin that it passes, so that it wants a reason. */
public final class LingualPlatesAreForShallowSulci implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-plates-are-for-shallow-sulci",
          "A lingual plate is used where a bar finds no room, or where the front teeth"
              + " call for it.",
          Severity.SHOULD,
          Source.read(
              Literature.BRITISH_NOTES + "; " + Literature.RADNAI + "; " + Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.LINGUAL_PLATE)) {
      List<String> reasons = PlateReasons.of(c);
      SulcusDepth depth = SulcusDepth.lingual(c);
      if (!reasons.isEmpty()) {
        on.upheld("is called for by " + String.join(" and ", reasons), c.subject());
      } else if (!depth.isCharted()) {
        depth.ask(on, c);
      } else {
        on.finding(c.name(), c.subject())
            .fact("covers the gums although a bar would fit")
            .measured(
                Amount.mm(depth.least()) + " of lingual sulcus",
                "less than "
                    + Amount.mm(s.profile().limit(Quantity.LINGUAL_BAR_DEPTH))
                    + ", or another reason")
            .remedy(c.label(ConnectorForm.LINGUAL_BAR), c.as(ConnectorForm.LINGUAL_BAR))
            .done();
      }
    }
  }
}
