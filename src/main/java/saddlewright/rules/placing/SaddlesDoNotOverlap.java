package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    List<Saddle> all = s.design().all(Saddle.class);
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Saddle a = all.get(i);
        Saddle b = all.get(j);
        if (a.span().overlaps(b.span())) {
          long shared = a.span().teeth().stream().filter(b.span()::contains).count();
          Saddle shorter = b.span().size() <= a.span().size() ? b : a;
          out.add(
              finding(Naming.of(a), Subject.of(s.arch(), a), Subject.of(s.arch(), b))
                  .fact("overlaps " + Naming.of(b))
                  .measured(Amount.of(shared, "shared place"), "no shared place")
                  .remedy("Remove " + Naming.of(shorter), new DesignEdit.Remove(shorter.id()))
                  .done());
        }
      }
    }
    return out;
  }
}
