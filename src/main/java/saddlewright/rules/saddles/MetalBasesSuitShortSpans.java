package saddlewright.rules.saddles;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleBase;
import saddlewright.rules.SaddleHeight;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Metal cannot be relined, so it belongs where the teeth carry the load and the ridge none. */
public final class MetalBasesSuitShortSpans implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "metal-bases-suit-short-spans",
          "A metal fitting surface is kept to a short span between two abutments, or to one too low for acrylic.",
          Severity.SHOULD,
          Source.read(Literature.BASE_SLIDES + "; " + Literature.OKLAHOMA + " (questions only)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.TOOTH_BORNE_SPAN);
    for (AreaSupport a : AreaSupport.all(s)) {
      Saddle saddle = a.saddle();
      if (saddle.base() != Saddle.Base.METAL || !a.isBounded()) {
        continue;
      }
      List<Tooth> teeth = SaddleTeeth.of(s, saddle);
      Subject subject = Subject.of(s.arch(), saddle);
      if (SaddleHeight.of(s, teeth).isLow()) {
        on.upheld("takes metal where there is no height for mesh and acrylic", subject);
      } else if (teeth.size() <= most) {
        on.upheld("is short enough for its abutments to carry, so it needs no relining", subject);
      } else {
        on.finding(Naming.of(saddle), subject)
            .fact("a metal base on a long span")
            .measured(SaddleTeeth.count(teeth.size()), "at most " + SaddleTeeth.count((long) most))
            .remedy("Make its base acrylic on a lattice", SaddleBase.acrylic(s, saddle))
            .done();
      }
    }
  }
}
