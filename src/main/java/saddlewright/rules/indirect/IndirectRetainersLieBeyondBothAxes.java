package saddlewright.rules.indirect;

import java.util.Optional;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Schools draw the axis through the clasps or through the rests; a safe place lies beyond both. */
public final class IndirectRetainersLieBeyondBothAxes implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "indirect-retainers-lie-beyond-both-axes",
          "An indirect retainer lies beyond the clasp axis and beyond the support axis.",
          Severity.CONSIDER,
          Source.read(Literature.BDJ_INDIRECT + "; " + Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LiftingSaddle x : LiftingSaddle.all(s)) {
      Optional<IndirectRetention> other = IndirectNeed.otherFacts(s, x.saddle());
      if (x.serving().isEmpty() || other.isEmpty()) {
        continue;
      }
      Optional<Rest> both =
          x.ownSideFirst().stream().filter(r -> other.get().reach(r) > 0).findFirst();
      if (both.isPresent()) {
        on.upheld(
            "lies beyond the clasp axis and the support axis alike",
            Subject.of(s.arch(), both.get()));
      } else {
        one(s, x, other.get(), on);
      }
    }
  }

  private static void one(Situation s, LiftingSaddle x, IndirectRetention other, Judging on) {
    Rest r = x.serving().get(0);
    Draft d =
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r), Subject.of(s.arch(), x.saddle()))
            .fact(
                "indirect retainer beyond the "
                    + s.profile().axis().words()
                    + ", but on the saddle's side of the "
                    + s.profile().axis().other().words())
            .measured(Amount.mm(-other.reach(r)) + " on the saddle's side", "beyond both");
    IndirectSite.best(s, other).stream()
        .filter(site -> x.facts().reach(s.form().tooth(site.tooth()).seat(site.site())) > 0)
        .forEach(site -> d.remedy(site.label(), site.edit(s)));
    d.done();
  }
}
