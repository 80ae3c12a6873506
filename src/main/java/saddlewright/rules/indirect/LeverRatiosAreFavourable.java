package saddlewright.rules.indirect;

import java.util.Locale;
import java.util.Optional;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The shorter the lever of a retainer beside that of the saddle, the more the clasps must hold. */
public final class LeverRatiosAreFavourable implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lever-ratios-are-favourable",
          "The lever of the indirect retainer is a fifth or more of the lever of the saddle.",
          Severity.CONSIDER,
          Source.derived(
              "several schools ask for the longest lever and for its ratio to be shown, none for a"
                  + " figure; a fifth follows from the law of levers"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.LEVER_RATIO);
    double far = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    for (LiftingSaddle x : LiftingSaddle.all(s)) {
      // One that is too near altogether is the matter of another rule.
      Optional<Rest> best =
          x.ownSideFirst().stream().filter(r -> x.facts().reach(r) >= far).findFirst();
      if (best.isEmpty()) {
        continue;
      }
      double ratio = x.facts().leverRatio(best.get());
      String levers =
          Amount.mm(x.facts().reach(best.get())) + " to " + Amount.mm(x.facts().loadDistance());
      if (ratio >= least) {
        on.upheld(
            "works with a lever of " + levers + " against " + Naming.of(x.saddle()),
            Subject.of(s.arch(), best.get()));
      } else {
        poor(s, x, best.get(), least, on);
      }
    }
  }

  private static void poor(Situation s, LiftingSaddle x, Rest best, double least, Judging on) {
    double ratio = x.facts().leverRatio(best);
    Draft d =
        on.finding(
                Naming.of(x.saddle()), Subject.of(s.arch(), x.saddle()), Subject.of(s.arch(), best))
            .fact(
                String.format(
                    Locale.ROOT,
                    "its lever is long beside that of the indirect retainer; the clasps must hold"
                        + " %.0f times its pull",
                    1 + 1 / ratio))
            .measured(
                String.format(Locale.ROOT, "ratio %.2f", ratio),
                String.format(Locale.ROOT, "at least %.2f", least));
    IndirectSite.best(s, x.facts()).stream()
        .filter(site -> site.distance() / x.facts().loadDistance() >= least)
        .forEach(site -> d.remedy(site.label(), site.edit(s)));
    d.done();
  }
}
