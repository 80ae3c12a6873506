package saddlewright.rules.saddles;

import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleBase;
import saddlewright.rules.SaddleHeight;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A ridge under a free-end base goes on shrinking, and only acrylic can follow it. */
public final class FreeEndBasesAreAcrylic implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-bases-are-acrylic",
          "The fitting surface of a free-end base is acrylic, so that it can be relined.",
          Severity.SHOULD,
          Source.read(Literature.BASE_SLIDES + "; " + Literature.DENTAL_STUDY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      Saddle saddle = a.saddle();
      if (!a.isFreeEnd()) {
        continue;
      }
      if (saddle.base() == Saddle.Base.ACRYLIC_ON_MESH) {
        on.upheld("can be relined as the ridge shrinks", Subject.of(s.arch(), saddle));
      } else if (SaddleHeight.of(s, SaddleTeeth.of(s, saddle)).isLow()) {
        on.judged();
      } else {
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
            .fact("a free-end base that cannot be relined")
            .measured("a metal fitting surface", "acrylic on open metalwork")
            .remedy("Make its base acrylic on a lattice", SaddleBase.acrylic(s, saddle))
            .done();
      }
    }
  }
}
