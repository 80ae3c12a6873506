package saddlewright.rules.bracing;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A short crown has no room for an arm with a guide plane under it. */
public final class ShortCrownsAreReciprocatedByPlates implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "short-crowns-are-reciprocated-by-plates",
          "A short crown is reciprocated by a plate, or by guide plate and strut, not by an arm.",
          Severity.SHOULD,
          Source.read(Literature.ELIASON + "; " + Literature.DALHOUSIE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.SHORT_CROWN);
    for (ReciprocalArm a : s.design().all(ReciprocalArm.class)) {
      if (!s.chart().stands(a.tooth())) {
        continue;
      }
      Subject arm = Subject.of(s.arch(), a);
      Optional<Double> height = s.chart().tooth(a.tooth()).crownHeight();
      if (height.isEmpty()) {
        on.unanswered(ChartField.crownHeight(List.of(a.tooth())), arm);
      } else if (height.get() >= least) {
        on.upheld("has room on a crown of " + Amount.mm(height.get()), arm);
      } else {
        Draft d =
            on.finding(a.tooth().toString(), arm)
                .fact("the crown is too short for a reciprocal arm")
                .measured(Amount.mm(height.get()) + " high", Amount.atLeastMm(least));
        PlateInstead.of(s, a).ifPresent(e -> d.remedy(PlateInstead.LABEL, e));
        d.done();
      }
    }
  }
}
