package saddlewright.rules.saddles;

import saddlewright.chart.ChartField;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleBase;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A fresh ridge shrinks within weeks; a base of metal over it is soon a base over air. */
public final class RecentRidgesTakeAcrylicBases implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "recent-ridges-take-acrylic-bases",
          "Over a ridge that is still healing the fitting surface is acrylic.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + " (question only); " + Literature.BASE_SLIDES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      Subject subject = Subject.of(s.arch(), saddle);
      boolean recent = isRecent(s, saddle);
      if (saddle.base() == Saddle.Base.ACRYLIC_ON_MESH) {
        if (recent) {
          on.upheld("can be relined while the ridge under it heals", subject);
        }
      } else if (recent) {
        on.finding(Naming.of(saddle), subject)
            .fact("metal over a ridge that is still healing")
            .measured("a metal fitting surface", "acrylic on open metalwork")
            .remedy("Make its base acrylic on a lattice", SaddleBase.acrylic(s, saddle))
            .done();
      } else {
        askOrPass(s, saddle, subject, on);
      }
    }
  }

  private static void askOrPass(Situation s, Saddle saddle, Subject subject, Judging on) {
    boolean asked = false;
    for (Side side : Side.values()) {
      if (touches(saddle, side) && !s.chart().softTissues().ridges().containsKey(side)) {
        on.unanswered(ChartField.ridge(s.arch(), side), subject);
        asked = true;
      }
    }
    if (!asked) {
      on.judged();
    }
  }

  private static boolean isRecent(Situation s, Saddle saddle) {
    for (Tooth t : saddle.span().teeth()) {
      if (s.chart().tooth(t).status() == ToothStatus.TO_BE_EXTRACTED) {
        return true;
      }
    }
    for (Side side : Side.values()) {
      if (touches(saddle, side)
          && s.chart().softTissues().ridges().get(side) == SoftTissues.RidgeState.RECENTLY_HEALED) {
        return true;
      }
    }
    return false;
  }

  private static boolean touches(Saddle saddle, Side side) {
    return saddle.span().first().side() == side || saddle.span().last().side() == side;
  }
}
