package saddlewright.rules.indirect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<IndirectRetention> all =
        IndirectNeed.saddles(s).stream().flatMap(x -> IndirectNeed.facts(s, x).stream()).toList();
    if (all.isEmpty()) {
      return List.of();
    }
    List<Finding> out = new ArrayList<>();
    for (Rest r : IndirectNeed.declared(s)) {
      IndirectRetention best =
          all.stream().max(Comparator.comparingDouble(f -> f.reach(r))).orElseThrow();
      if (best.reach(r) <= 0) {
        out.add(finding(s, r, best));
      }
    }
    return out;
  }

  private Finding finding(Situation s, Rest r, IndirectRetention facts) {
    Draft d =
        finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact("indirect retainer on the saddle's side of the " + s.profile().axis().words())
            .measured(
                Amount.mm(-facts.reach(r)) + " on the saddle's side",
                Amount.atLeastMm(s.profile().limit(Quantity.INDIRECT_DISTANCE)) + " beyond");
    Rest plain = new Rest(r.id(), r.tooth(), r.site(), r.form(), r.seat(), false);
    IndirectSite.best(s, facts)
        .forEach(
            x ->
                d.remedy(
                    x.label() + " instead",
                    DesignEdit.several(x.edit(s), new DesignEdit.Change(plain))));
    return d.remedy("Keep it as a plain rest", new DesignEdit.Change(plain)).done();
  }
}
