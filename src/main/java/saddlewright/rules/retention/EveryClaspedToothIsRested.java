package saddlewright.rules.retention;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.TerminalAbutment;

/** A clasp without a rest sinks down its tooth and into the gingiva. */
public final class EveryClaspedToothIsRested implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "every-clasped-tooth-is-rested",
          "A tooth that bears a clasp bears a rest.",
          Severity.MUST,
          Source.read(Literature.NEURONS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Tooth t : s.chart().standing()) {
      List<Clasp> clasps = s.design().stream(Clasp.class).filter(c -> c.tooth() == t).toList();
      if (clasps.isEmpty()) {
        continue;
      }
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList();
      if (rests.isEmpty()) {
        RestSite site = site(s, t, clasps.get(0));
        on.finding(t.toString(), Subject.of(t))
            .fact(Naming.of(clasps.get(0)) + " without a rest on the same tooth")
            .measured("0 rests", "1 rest")
            .remedy(NewRest.label(t, site), NewRest.edit(s, t, site))
            .done();
      }
      for (Rest r : rests) {
        on.upheld(
            "keeps the " + Naming.of(clasps.get(0)) + " from sinking into the gingiva",
            Subject.of(s.arch(), r));
      }
    }
  }

  /** Where the arm begins; on the terminal abutment of a free-end saddle, away from it. */
  private static RestSite site(Situation s, Tooth t, Clasp clasp) {
    return TerminalAbutment.at(s, t)
        .map(a -> a.end().farSite())
        .orElse(t.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(clasp.origin()));
  }
}
