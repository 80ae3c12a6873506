package saddlewright.rules.placing;

import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A place lies in one saddle only. */
public final class SaddlesDoNotOverlap implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "saddles-do-not-overlap",
          "Every replaced tooth lies in exactly one saddle.",
          Severity.MUST,
          Source.commonPractice("two bases cannot share a place"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Saddle> all = s.design().all(Saddle.class);
    for (int i = 0; i < all.size(); i++) {
      on.judged();
      for (int j = i + 1; j < all.size(); j++) {
        if (all.get(i).span().overlaps(all.get(j).span())) {
          find(s, all.get(i), all.get(j), on);
        }
      }
    }
  }

  private static void find(Situation s, Saddle a, Saddle b, Judging on) {
    long shared = a.span().teeth().stream().filter(b.span()::contains).count();
    Saddle shorter = b.span().size() <= a.span().size() ? b : a;
    on.finding(Naming.of(a), Subject.of(s.arch(), a), Subject.of(s.arch(), b))
        .fact("overlaps " + Naming.of(b))
        .measured(Amount.of(shared, "shared place"), "no shared place")
        .remedy("Remove " + Naming.of(shorter), new DesignEdit.Remove(shorter.id()))
        .done();
  }
}
