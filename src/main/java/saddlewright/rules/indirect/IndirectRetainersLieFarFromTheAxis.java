package saddlewright.rules.indirect;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
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

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    Map<ComponentId, Finding> out = new LinkedHashMap<>();
    for (Saddle saddle : IndirectNeed.saddles(s)) {
      IndirectNeed.facts(s, saddle).ifPresent(f -> judge(s, f, out));
    }
    return List.copyOf(out.values());
  }

  /** Judges the farthest of the declared retainers: it is the one that acts. */
  private void judge(Situation s, IndirectRetention facts, Map<ComponentId, Finding> out) {
    double least = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    IndirectNeed.declared(s).stream()
        .max(Comparator.comparingDouble(facts::reach))
        .filter(r -> facts.reach(r) > 0 && facts.reach(r) < least)
        .ifPresent(r -> out.putIfAbsent(r.id(), finding(s, r, facts, least)));
  }

  private Finding finding(Situation s, Rest r, IndirectRetention facts, double least) {
    List<IndirectSite> better =
        IndirectSite.best(s, facts).stream().filter(x -> x.distance() >= least).toList();
    Draft d =
        finding(r.tooth().toString(), Subject.of(s.arch(), r))
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
    return d.done();
  }
}
