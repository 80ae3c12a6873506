package saddlewright.rules.saddles;

import java.util.OptionalDouble;
import saddlewright.chart.ChartField;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.FlangeUndercut;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * A flange in an undercut scrapes the mucosa each time the denture goes in, and hollowing it out
 * leaves a trap.
 */
public final class FlangesStayOutOfUndercuts implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "flanges-stay-out-of-undercuts",
          "A full flange does not reach into a deep tissue undercut.",
          Severity.SHOULD,
          Source.read(Literature.BASE_SLIDES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.FLANGE_UNDERCUT);
    for (Saddle saddle : s.design().all(Saddle.class)) {
      Subject subject = Subject.of(s.arch(), saddle);
      OptionalDouble deepest = FlangeUndercut.deepest(s, saddle);
      if (saddle.flange() != Saddle.Flange.FULL) {
        if (deepest.orElse(0) > most) {
          on.upheld("ends short of the tissue undercut", subject);
        }
      } else if (deepest.isEmpty()) {
        on.unanswered(ChartField.tissueUndercut(saddle.span().teeth()), subject);
      } else if (deepest.getAsDouble() > most) {
        on.finding(Naming.of(saddle), subject)
            .fact("its flange reaches into a tissue undercut")
            .measured(Amount.mm(deepest.getAsDouble()) + " deep", "at most " + Amount.mm(most))
            .remedy(
                "Give it a part flange",
                new DesignEdit.Change(saddle.withFlange(Saddle.Flange.PART)))
            .done();
      } else {
        on.judged();
      }
    }
  }
}
