package saddlewright.rules.framework;

import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
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

/** A border that ends near the gingival margin strips it. */
public final class ConnectorsClearTheGingivalMargins implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "connectors-clear-the-gingival-margins",
          "The border of a major connector keeps clear of the gingival margins, or runs"
              + " up on to the teeth.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean upper = s.arch() == Arch.UPPER;
    double good = s.profile().limit(upper ? Quantity.UPPER_BORDER : Quantity.LOWER_BORDER);
    // Below this a border strips the gum in either jaw; a school may ask for more.
    double least = Math.min(good, s.profile().limit(Quantity.UPPER_BORDER_LEAST));
    for (LaidConnector c : LaidConnector.all(s)) {
      OptionalDouble clear = c.measure(Measure.MARGIN_CLEARANCE);
      if (clear.isEmpty()) {
        // Plates and dental bars run up on to the teeth.
        on.judged();
      } else if (clear.getAsDouble() < good - Clearance.MEASURING_ERROR_MM) {
        boolean stripping = clear.getAsDouble() < least - Clearance.MEASURING_ERROR_MM;
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("its border lies close to the gingival margins")
                .measured(
                    Amount.mm(clear.getAsDouble()), Amount.atLeastMm(stripping ? least : good))
                .weighing(stripping ? Severity.MUST : Severity.SHOULD);
        if (!upper && !c.is(ConnectorForm.LABIAL_BAR)) {
          d.remedy(
              "Set it " + Amount.mm(good) + " clear of the gums",
              c.shaped(c.connector().shape().withClearance(Optional.of(good))));
        } else if (c.connector().shape().clearance().filter(v -> v < good).isPresent()) {
          d.remedy(
              "Return to the usual clearance",
              c.shaped(c.connector().shape().withClearance(Optional.empty())));
        }
        d.done();
      } else {
        on.upheld(
            "keeps " + Amount.mm(clear.getAsDouble()) + " clear of the gingival margins",
            c.subject());
      }
    }
  }
}
