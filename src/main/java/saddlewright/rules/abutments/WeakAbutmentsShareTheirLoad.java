package saddlewright.rules.abutments;

import java.util.Optional;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Beside a weak abutment a second tooth takes part of the load. */
public final class WeakAbutmentsShareTheirLoad implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "weak-abutments-share-their-load",
          "A weak tooth is not the only one to carry its end of a saddle.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.MOUTH_PREPARATION));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      for (EndSupport e : a.ends()) {
        Optional<String> why = Weakness.of(s, e.abutment());
        if (why.isPresent() && e.isRested()) {
          weigh(s, a, e, why.get(), on);
        }
      }
    }
  }

  private static void weigh(Situation s, AreaSupport a, EndSupport e, String why, Judging on) {
    if (!e.nextRests().isEmpty()) {
      on.upheld(
          "takes part of the load of " + e.abutment() + ", which is weak",
          Subject.of(s.arch(), e.nextRests().get(0)));
      return;
    }
    Optional<Tooth> next = e.abutment().neighbour(e.facing().opposite()).filter(s.chart()::stands);
    if (next.isEmpty()) {
      // No tooth stands there to take a share; that the abutment is weak is said elsewhere.
      on.judged();
      return;
    }
    Draft d =
        on.finding(
                e.abutment().toString(), Subject.of(e.abutment()), Subject.of(s.arch(), a.saddle()))
            .fact(
                "has "
                    + why
                    + ", yet alone carries "
                    + Naming.of(a.saddle())
                    + " at this end; share its load with the next tooth")
            .measured("0 rests on the next tooth", "1 rest");
    RestSite site =
        next.get().isAnterior()
            ? RestSite.CINGULUM
            : RestSite.occlusal(next.get().endTowards(e.abutment()));
    d.remedy(NewRest.label(next.get(), site), NewRest.edit(s, next.get(), site));
    d.done();
  }
}
