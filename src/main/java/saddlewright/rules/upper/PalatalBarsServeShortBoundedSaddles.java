package saddlewright.rules.upper;

import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A narrow bar carries little and must be thick. */
public final class PalatalBarsServeShortBoundedSaddles implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "palatal-bars-serve-short-bounded-saddles",
          "A palatal bar joins short bounded saddles only.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    double most = s.profile().limit(Quantity.SHORT_SADDLE);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_BAR)) {
      if (areas.hasFreeEnd() || areas.longest() > most) {
        ConnectorForm better =
            areas.hasFreeEnd() ? ConnectorForm.PALATAL_PLATE : ConnectorForm.PALATAL_STRAP;
        on.finding(c.name(), c.subject())
            .fact("too slight for these saddles")
            .measured(
                areas.hasFreeEnd()
                    ? Amount.of(areas.freeEnds().size(), "free-end saddle")
                    : areas.longest() + " teeth in one saddle",
                "bounded saddles of at most " + Math.round(most) + " teeth")
            .remedy(c.label(better), c.as(better))
            .done();
      } else {
        on.judged();
      }
    }
  }
}
