package saddlewright.rules.lower;

import java.util.Locale;
import java.util.OptionalDouble;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.Measure;
import saddlewright.mechanics.BarStiffness;
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

/** A bar that gives hands the load of one side to the abutments of that side. */
public final class BarsAreStiffEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bars-are-stiff-enough",
          "A lingual bar is stiff enough for its length.",
          Severity.SHOULD,
          Source.derived(
              "stiffness of a U-shaped half-pear bar by beam theory, nearly all of it twist; ranking of sections after "
                  + Literature.BEN_UR));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.BAR_STIFFNESS);
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.LINGUAL_BAR, ConnectorForm.CONTINUOUS_BAR)) {
      OptionalDouble height = c.measure(Measure.HEIGHT);
      if (height.isEmpty() || c.laid().centreline().isEmpty()) {
        continue;
      }
      double stiff =
          BarStiffness.of(c.laid().centreline().get(), height.getAsDouble()).newtonsPerMillimetre();
      if (stiff < least) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("gives under load on one side")
                .measured(words(stiff) + " (model estimate)", "at least " + words(least));
        if (c.connector().shape().height().isPresent()) {
          d.remedy("Return to the usual height", c.usualHeight());
        }
        d.remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE)).done();
      } else {
        on.upheld("joins the sides stiffly (" + words(stiff) + ", model estimate)", c.subject());
      }
    }
  }

  private static String words(double newtons) {
    return String.format(Locale.ROOT, "%.1f N/mm", newtons);
  }
}
