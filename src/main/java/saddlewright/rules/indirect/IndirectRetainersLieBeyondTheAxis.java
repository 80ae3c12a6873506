package saddlewright.rules.indirect;

import java.util.Comparator;
import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The clasps must lie between an indirect retainer and the saddle that it serves. */
public final class IndirectRetainersLieBeyondTheAxis implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "indirect-retainers-lie-beyond-the-axis",
          "An indirect retainer lies on the opposite side of the axis from a saddle that may lift.",
          Severity.MUST,
          Source.read(Literature.BDJ_INDIRECT));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<LiftingSaddle> all = LiftingSaddle.all(s);
    if (all.isEmpty()) {
      return;
    }
    for (Rest r : IndirectNeed.declared(s)) {
      LiftingSaddle best = served(all, r);
      double reach = best.facts().reach(r);
      if (reach > 0) {
        on.upheld(
            "lies "
                + Amount.mm(reach)
                + " beyond the "
                + s.profile().axis().words()
                + " from "
                + Naming.of(best.saddle()),
            Subject.of(s.arch(), r));
      } else {
        misplaced(s, r, best.facts(), on);
      }
    }
  }

  /** The saddle on its own side if it serves that, or else the one that it lies farthest from. */
  private static LiftingSaddle served(List<LiftingSaddle> all, Rest r) {
    return all.stream()
        .filter(x -> x.side() == r.tooth().side() && x.serving().contains(r))
        .findFirst()
        .or(() -> all.stream().max(Comparator.comparingDouble(x -> x.facts().reach(r))))
        .orElseThrow();
  }

  private static void misplaced(Situation s, Rest r, IndirectRetention facts, Judging on) {
    Draft d =
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact("indirect retainer on the saddle's side of the " + s.profile().axis().words())
            .measured(
                Amount.mm(-facts.reach(r)) + " on the saddle's side",
                Amount.atLeastMm(s.profile().limit(Quantity.INDIRECT_DISTANCE)) + " beyond");
    Rest plain = r.asPlain();
    IndirectSite.best(s, facts)
        .forEach(
            x ->
                d.remedy(
                    x.label() + " instead",
                    DesignEdit.several(x.edit(s), new DesignEdit.Change(plain))));
    d.remedy("Keep it as a plain rest", new DesignEdit.Change(plain)).done();
  }
}
