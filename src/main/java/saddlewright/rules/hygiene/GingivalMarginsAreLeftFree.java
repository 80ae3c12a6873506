package saddlewright.rules.hygiene;

import java.util.List;
import saddlewright.design.ConnectorForm;
import saddlewright.design.Subject;
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
import saddlewright.rules.lower.PlateReasons;

/** The most certain harm that a partial denture does is to the gums that it covers. */
public final class GingivalMarginsAreLeftFree implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "gingival-margins-are-left-free",
          "A partial denture leaves most of the lingual gingival margins free.",
          Severity.SHOULD,
          Source.read(Literature.OWALL + "; " + Literature.ORR));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().majorConnector().isEmpty() || s.chart().standing().isEmpty()) {
      return;
    }
    double share = 100 * s.layout().gums().share();
    double most = s.profile().limit(Quantity.COVERED_MARGINS);
    if (share <= most) {
      on.upheld(
          "leaves " + Math.round(100 - share) + " % of the lingual gingival margins free",
          Subject.of(s.arch()));
      return;
    }
    List<LaidConnector> plates = LaidConnector.all(s, ConnectorForm.LINGUAL_PLATE);
    boolean called = plates.stream().anyMatch(c -> !PlateReasons.of(c).isEmpty());
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("covers many gingival margins")
            .measured(Math.round(share) + " % covered", "at most " + Math.round(most) + " %")
            .weighing(called ? Severity.CONSIDER : Severity.SHOULD);
    if (!plates.isEmpty() && !called) {
      d.remedy(
          plates.get(0).label(ConnectorForm.LINGUAL_BAR),
          plates.get(0).as(ConnectorForm.LINGUAL_BAR));
    }
    d.done();
  }
}
