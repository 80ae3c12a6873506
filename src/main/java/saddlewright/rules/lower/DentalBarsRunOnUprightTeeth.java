package saddlewright.rules.lower;

import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.framework.CrossArch;

/** A bar shows through a gap, and cannot pass teeth that lean over it. */
public final class DentalBarsRunOnUprightTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dental-bars-run-on-upright-teeth",
          "A dental bar runs on an unbroken row of teeth that do not lean to the" + " tongue.",
          Severity.SHOULD,
          Source.read(Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.DENTAL_BAR)) {
      Optional<Tooth> gap =
          c.connector().span().teeth().stream()
              .filter(t -> t.position() <= 4 && s.chart().isLost(t))
              .filter(t -> !s.chart().isClosed(t) && s.design().saddleAt(t).isEmpty())
              .findFirst();
      Optional<Tooth> leaning = BarObstacles.leaning(s, c).stream().findFirst();
      if (gap.isPresent() || leaning.isPresent()) {
        on.finding(c.name(), c.subject())
            .fact("cannot lie close to the teeth")
            .measured(
                gap.map(t -> "gap at " + t).orElseGet(() -> leaning.get() + " leans to the tongue"),
                "an unbroken row of upright teeth")
            .remedy(c.label(CrossArch.usualForm(s)), c.as(CrossArch.usualForm(s)))
            .done();
      } else {
        on.upheld("runs on an unbroken row of teeth", c.subject());
      }
    }
  }
}
