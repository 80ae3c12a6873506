package saddlewright.rules.indirect;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The longer the lever of an indirect retainer, the less its clasps have to hold. */
public final class IndirectRetainersLieFarFromTheAxis implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "indirect-retainers-lie-far-from-the-axis",
          "An indirect retainer lies as far from the axis as a sound tooth allows.",
          Severity.SHOULD,
          Source.read("teaching notes on indirect retainers; the least distance is derived"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Judges the farthest retainer of each saddle: it is the one that acts. */
  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    Set<ComponentId> judged = new HashSet<>();
    for (LiftingSaddle x : LiftingSaddle.all(s)) {
      Optional<Rest> farthest = x.serving().stream().findFirst();
      if (farthest.isEmpty() || !judged.add(farthest.get().id())) {
        continue;
      }
      Rest r = farthest.get();
      if (x.facts().reach(r) < least) {
        near(s, r, x.facts(), least, on);
      } else {
        on.judged();
      }
    }
  }

  private static void near(Situation s, Rest r, IndirectRetention facts, double least, Judging on) {
    List<IndirectSite> better =
        IndirectSite.best(s, facts).stream().filter(x -> x.distance() >= least).toList();
    Draft d =
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact(
                String.format(
                    Locale.ROOT,
                    "indirect retainer close to the %s, lever ratio %.2f%s",
                    s.profile().axis().words(),
                    facts.leverRatio(r),
                    better.isEmpty() ? "; no sound tooth lies farther" : ""))
            .measured(Amount.mm(facts.reach(r)), Amount.atLeastMm(least))
            .weighing(better.isEmpty() ? Severity.CONSIDER : Severity.SHOULD);
    better.forEach(x -> d.remedy(x.label(), x.edit(s)));
    d.done();
  }
}
