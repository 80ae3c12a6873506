package saddlewright.rules.support;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
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
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      EndSupport end = a.ends().get(0);
      if (end.isRested()) {
        for (List<Rest> rests : List.of(end.facingRests(), end.otherRests())) {
          for (Rest r : rests) {
            on.upheld("carries the front end of " + Naming.of(a.saddle()), Subject.of(s.arch(), r));
          }
        }
        continue;
      }
      Tooth t = end.abutment();
      on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
          .fact("no rest on its terminal abutment " + t)
          .measured("0 rests", "1 rest")
          .remedy(NewRest.label(t, end.farSite()), NewRest.edit(s, t, end.farSite()))
          .done();
    }
  }
}
