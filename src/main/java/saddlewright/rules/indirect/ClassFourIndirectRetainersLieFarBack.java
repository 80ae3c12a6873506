package saddlewright.rules.indirect;

import java.util.Optional;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Side;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Against an anterior saddle the long lever lies at the back of the arch. */
public final class ClassFourIndirectRetainersLieFarBack implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-four-indirect-retainers-lie-far-back",
          "In Class IV indirect retainers lie on the last sound tooth of their side.",
          Severity.SHOULD,
          Source.read(Literature.INDIRECT_SLIDES + "; " + Literature.STEWART_NOTES));

  /** Sites closer together than this are equally good, mm: a fraction of a molar's width. */
  private static final double ALIKE = 3;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.IV) {
      return;
    }
    for (LiftingSaddle lifting : LiftingSaddle.all(s)) {
      for (Side side : Side.values()) {
        lifting.serving().stream()
            .filter(r -> r.tooth().side() == side)
            .findFirst()
            .ifPresent(r -> weigh(s, lifting, r, on));
      }
    }
  }

  private static void weigh(Situation s, LiftingSaddle lifting, Rest r, Judging on) {
    double reach = lifting.facts().reach(r);
    Optional<IndirectSite> better =
        IndirectSite.all(s, lifting.facts()).stream()
            .filter(x -> x.tooth().side() == r.tooth().side())
            .filter(x -> x.tooth() != r.tooth() && x.distance() > reach + ALIKE)
            .findFirst();
    Subject rest = Subject.of(s.arch(), r);
    if (better.isEmpty()) {
      on.upheld("stands on the last sound tooth of its side, " + Amount.mm(reach) + " back", rest);
      return;
    }
    on.finding(r.tooth().toString(), rest)
        .fact("indirect retainer in front of " + better.get().tooth() + ", which is sound")
        .measured(
            Amount.mm(reach) + " beyond the " + s.profile().axis().words(),
            Amount.mm(better.get().distance()))
        .remedy(
            better.get().label() + " instead",
            DesignEdit.several(better.get().edit(s), new DesignEdit.Change(r.asPlain())))
        .done();
  }
}
