package saddlewright.rules.indirect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Side;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Situation;

/**
 * A saddle that may lift, with the retainers that keep it down.
 *
 * @param saddle the saddle
 * @param facts the levers about the axis that the school looks at
 * @param serving declared indirect retainers beyond that axis, the farthest first
 */
record LiftingSaddle(Saddle saddle, IndirectRetention facts, List<Rest> serving) {
  LiftingSaddle {
    serving = List.copyOf(serving);
  }

  /** Those for which an axis can be drawn. */
  static List<LiftingSaddle> all(Situation s) {
    List<Rest> declared = IndirectNeed.declared(s);
    List<LiftingSaddle> out = new ArrayList<>();
    for (Saddle saddle : IndirectNeed.saddles(s)) {
      IndirectNeed.facts(s, saddle)
          .ifPresent(f -> out.add(new LiftingSaddle(saddle, f, serving(f, declared))));
    }
    return out;
  }

  private static List<Rest> serving(IndirectRetention facts, List<Rest> declared) {
    return declared.stream()
        .filter(r -> facts.reach(r) > 0)
        .sorted(Comparator.comparingDouble((Rest r) -> -facts.reach(r)))
        .toList();
  }

  /** The retainer that acts first: the farthest on the saddle's own side, or else the farthest. */
  Optional<Rest> keeper() {
    return serving.stream()
        .filter(r -> r.tooth().side() == side())
        .findFirst()
        .or(() -> serving.stream().findFirst());
  }

  /** The side of the saddle; a saddle across the midline counts for that of its first place. */
  Side side() {
    return saddle.span().first().side();
  }
}
