package saddlewright.rules.upper;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
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

/** A full palate for a tooth or two is the commonest waste of coverage. */
public final class PalatalPlatesSuitLongSaddles implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "palatal-plates-suit-long-saddles",
          "A palatal plate is used for free-end or long saddles, not for a few teeth"
              + " between standing ones.",
          Severity.SHOULD,
          Source.read("a teaching site's list of beginners' mistakes; " + Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Replacing no more than this, a plate has no excuse (derived). */
  private static final int FEW = 3;

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_PLATE)) {
      boolean small =
          areas.isBoundedBehind() && areas.longest() <= s.profile().limit(Quantity.SHORT_SADDLE);
      List<Tooth> doubtful =
          s.chart().where(t -> s.chart().stands(t) && s.chart().tooth(t).doubtful());
      if (!small) {
        on.judged();
      } else if (!doubtful.isEmpty()) {
        on.upheld("can take " + doubtful.get(0) + " when it is lost", c.subject());
      } else {
        int n = areas.replaced();
        on.finding(c.name(), c.subject())
            .fact("covers the palate for a few teeth that standing ones can carry")
            .measured(
                n == 1 ? "1 tooth replaced" : n + " teeth replaced", "free-end or long saddles")
            .weighing(n <= FEW ? Severity.SHOULD : Severity.CONSIDER)
            .remedy(c.label(ConnectorForm.PALATAL_STRAP), c.as(ConnectorForm.PALATAL_STRAP))
            .done();
      }
    }
  }
}
