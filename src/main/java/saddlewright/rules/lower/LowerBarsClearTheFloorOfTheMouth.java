package saddlewright.rules.lower;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A bar that reaches the raised floor is lifted with every swallow, and cuts. */
public final class LowerBarsClearTheFloorOfTheMouth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-bars-clear-the-floor-of-the-mouth",
          "A lingual bar ends at least 1 mm above the raised floor of the mouth.",
          Severity.MUST,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.MCCRACKEN_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double air = s.profile().limit(Quantity.FLOOR_CLEARANCE);
    double deep = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH);
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.LINGUAL_BAR, ConnectorForm.CONTINUOUS_BAR)) {
      SulcusDepth depth = SulcusDepth.lingual(c);
      Map<Tooth, Double> reach = s.layout().barDepths(c.laid());
      Optional<Tooth> lowest =
          depth.charted().keySet().stream()
              .filter(t -> depth.charted().get(t) >= deep && reach.containsKey(t))
              .min(Comparator.comparingDouble(t -> depth.charted().get(t) - reach.get(t)));
      if (lowest.isEmpty()) {
        if (!depth.isCharted()) {
          depth.ask(on, c);
        }
        continue;
      }
      double left = depth.charted().get(lowest.get()) - reach.get(lowest.get());
      if (left < air - DRAWING_ERROR_MM) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("too near to the raised floor of the mouth at " + lowest.get())
                .measured(Amount.mm(Math.max(0, left)), Amount.atLeastMm(air));
        if (!c.connector().shape().equals(ConnectorShape.DEFAULT)) {
          d.remedy("Return to the usual height and clearance", c.shaped(ConnectorShape.DEFAULT));
        }
        d.remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE)).done();
      } else {
        on.upheld("stays " + Amount.mm(left) + " above the floor of the mouth", c.subject());
      }
    }
  }

  /** On a curved arch the drawn bar keeps a little farther from the margin than it need, mm. */
  private static final double DRAWING_ERROR_MM = 0.5;
}
