package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
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
          "The border of a major connector keeps clear of the gingival margins, or runs up on to"
              + " the teeth.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    boolean upper = s.arch() == Arch.UPPER;
    double good = s.profile().limit(upper ? Quantity.UPPER_BORDER : Quantity.LOWER_BORDER);
    double least = s.profile().limit(upper ? Quantity.UPPER_BORDER_LEAST : Quantity.LOWER_BORDER);
    for (Laid laid : s.layout().all(MajorConnector.class)) {
      MajorConnector m = (MajorConnector) laid.component();
      OptionalDouble clear = laid.measure(Measure.MARGIN_CLEARANCE);
      if (clear.isPresent() && clear.getAsDouble() < good - Clearance.MEASURING_ERROR_MM) {
        boolean stripping = clear.getAsDouble() < least - Clearance.MEASURING_ERROR_MM;
        Draft d =
            finding(Naming.of(m), Subject.of(s.arch(), m))
                .fact("its border lies close to the gingival margins")
                .measured(
                    Amount.mm(clear.getAsDouble()), Amount.atLeastMm(stripping ? least : good))
                .weighing(stripping ? Severity.MUST : Severity.SHOULD);
        if (m.shape().clearance().filter(v -> v < good).isPresent()) {
          d.remedy(
              "Return to the usual clearance",
              new DesignEdit.Change(m.withShape(m.shape().withClearance(Optional.empty()))));
        }
        out.add(d.done());
      }
    }
    return out;
  }
}
