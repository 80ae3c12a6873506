package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The tooth in front of a free-end saddle carries its front end. */
public final class FreeEndSaddlesAreRested implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-saddles-are-rested",
          "A free-end saddle has a rest on its terminal abutment.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd() && !a.ends().get(0).isRested()) {
        Tooth t = a.ends().get(0).abutment();
        RestSite site = a.ends().get(0).farSite();
        out.add(
            finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
                .fact("no rest on its terminal abutment " + t)
                .measured("0 rests", "1 rest")
                .remedy(NewRest.label(t, site), NewRest.edit(s, t, site))
                .done());
      }
    }
    return out;
  }
}
