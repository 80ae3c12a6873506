package saddlewright.rules.placing;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Outlook;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A third molar that is used turns a free-end saddle into a bounded one. */
public final class StandingThirdMolarsServe implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "standing-third-molars-serve",
          "A standing third molar behind a saddle is used as its abutment.",
          Severity.CONSIDER,
          Source.read(Literature.APPLEGATE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      for (Tooth t : s.chart().standing()) {
        if (t.position() == 8 && isBehind(s, a, t)) {
          weigh(s, a, t, on);
        }
      }
    }
  }

  private static void weigh(Situation s, AreaSupport a, Tooth molar, Judging on) {
    if (a.ends().stream().anyMatch(e -> e.abutment() == molar)) {
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == molar).toList();
      on.judged();
      for (Rest r : rests) {
        on.upheld(
            "makes " + molar + " an abutment, so that " + Naming.of(a.saddle()) + " is bounded",
            Subject.of(s.arch(), r));
      }
    } else if (Outlook.isPoor(s, molar)) {
      on.judged();
    } else {
      on.finding(molar.toString(), Subject.of(molar))
          .fact("stands behind " + Naming.of(a.saddle()) + " but carries nothing")
          .measured("a free-end saddle", "a bounded saddle, rested on " + molar)
          .remedy(
              NewRest.label(molar, RestSite.MESIAL_OCCLUSAL),
              NewRest.edit(s, molar, RestSite.MESIAL_OCCLUSAL))
          .done();
    }
  }

  /** Whether nothing but lost teeth lies between the saddle and this molar. */
  private static boolean isBehind(Situation s, AreaSupport a, Tooth molar) {
    Span span = a.saddle().span();
    int step = molar.place() == 0 ? -1 : 1;
    int from = step < 0 ? span.first().place() : span.last().place();
    for (int p = from + step; p != molar.place(); p += step) {
      if (p < 0 || p > 15 || s.chart().stands(Tooth.at(s.arch(), p))) {
        return false;
      }
    }
    return !span.contains(molar);
  }
}
