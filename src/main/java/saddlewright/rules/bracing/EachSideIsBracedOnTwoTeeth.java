package saddlewright.rules.bracing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Plating;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.TerminalAbutment;

/** One braced tooth is a pivot; two on each side keep a denture from swinging. */
public final class EachSideIsBracedOnTwoTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "each-side-is-braced-on-two-teeth",
          "On each side rigid parts brace at least two teeth.",
          Severity.SHOULD,
          Source.fromMemory(Literature.BDJ_BRACING + "; the same in " + Literature.OKLAHOMA));

  private static final int ENOUGH = 2;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().majorConnector().isEmpty() || s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    for (Side side : Side.values()) {
      List<Tooth> standing = s.chart().standing().stream().filter(t -> t.side() == side).toList();
      List<Tooth> braced = BracedTeeth.on(s, side);
      int needed = Math.min(ENOUGH, standing.size());
      if (braced.size() >= needed) {
        on.judged();
        continue;
      }
      List<Tooth> rested = standing.stream().filter(t -> isRested(s, t)).toList();
      List<Subject> about = new ArrayList<>();
      (!braced.isEmpty() ? braced : !rested.isEmpty() ? rested : standing)
          .forEach(t -> about.add(Subject.of(t)));
      Draft d =
          on.finding(side.code() + " side", about)
              .fact("too few teeth are braced against sideways push")
              .measured(Amount.teeth(braced.size(), "braced"), Amount.teeth(needed, "braced"))
              .weighing(
                  !braced.isEmpty() && isHeldByABase(s, side)
                      ? Severity.CONSIDER
                      : Severity.SHOULD);
      List<Tooth> bare = rested.stream().filter(t -> !braced.contains(t)).toList();
      if (braced.size() + bare.size() >= needed) {
        d.remedy("Plate the rested teeth of this side", plated(s, bare));
      }
      d.done();
    }
  }

  /** The full flange of a free-end saddle takes sideways push with its ridge. */
  private static boolean isHeldByABase(Situation s, Side side) {
    return TerminalAbutment.all(s).stream()
        .anyMatch(a -> a.tooth().side() == side && a.saddle().flange() == Saddle.Flange.FULL);
  }

  private static boolean isRested(Situation s, Tooth t) {
    return s.design().stream(Rest.class).anyMatch(r -> r.tooth() == t);
  }

  private static DesignEdit plated(Situation s, List<Tooth> teeth) {
    return new DesignEdit.Several(
        teeth.stream()
            .<DesignEdit>map(
                t -> new DesignEdit.Place(new Plating(s.design().freshId("plating"), Span.of(t))))
            .toList());
  }
}
