package saddlewright.rules.bracing;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.GuideSurface;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A guide plane that is too low leads the denture only when it is already home. */
public final class GuidePlanesAreTallEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "guide-planes-are-tall-enough",
          "A guide plane is 3 mm high or more beside a bounded saddle, and 1.5 mm or more at a free"
              + " end.",
          Severity.SHOULD,
          Source.read(
              "North American teaching cards; "
                  + Literature.STEWART_NOTES
                  + "; British teaching agrees from memory"));

  /** What the layout rounds away, mm. */
  private static final double SLACK = 0.05;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (GuideSurface g : GuideSurface.all(s)) {
      if (g.end().isEmpty()) {
        continue;
      }
      Subject part = Subject.of(s.arch(), g.part());
      if (s.chart().tooth(g.tooth()).crownHeight().isEmpty()) {
        on.unanswered(ChartField.crownHeight(List.of(g.tooth())), part);
        continue;
      }
      double least =
          s.profile()
              .limit(
                  facesFreeEnd(s, g) ? Quantity.GUIDE_PLANE_FREE_END : Quantity.GUIDE_PLANE_HEIGHT);
      if (g.height() >= least - SLACK) {
        on.upheld("leads the denture over " + Amount.mm(g.height()) + " of its path", part);
      } else {
        on.finding(g.tooth().toString(), part)
            .fact(Naming.of(g.part()) + ": the crown is too short for a guide plane of full height")
            .measured(Amount.mm(g.height()), Amount.atLeastMm(least))
            .done();
      }
    }
  }

  private static boolean facesFreeEnd(Situation s, GuideSurface g) {
    return AreaSupport.all(s).stream()
        .filter(AreaSupport::isFreeEnd)
        .flatMap(a -> a.ends().stream())
        .anyMatch(e -> e.abutment() == g.tooth() && g.end().equals(Optional.of(e.facing())));
  }
}
