package saddlewright.rules.indirect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import saddlewright.dentition.Side;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.layout.Layout;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Profile;
import saddlewright.rules.Situation;

/**
 * A saddle that may lift, with the retainers that keep it down.
 *
 * @param saddle the saddle
 * @param facts the levers about the axis that the school looks at
 * @param serving declared indirect retainers beyond that axis, the farthest first
 */
record LiftingSaddle(Saddle saddle, IndirectRetention facts, List<Rest> serving) {
  /** Found already, for as long as the layout is in use; one school at a time. */
  private static final Map<Layout, Known> KNOWN = Collections.synchronizedMap(new WeakHashMap<>());

  private record Known(Profile profile, List<LiftingSaddle> saddles) {}

  LiftingSaddle {
    serving = List.copyOf(serving);
  }

  /** Those for which an axis can be drawn; worked out once, since eight rules ask for them. */
  static List<LiftingSaddle> all(Situation s) {
    Known known = KNOWN.get(s.layout());
    if (known == null || known.profile != s.profile()) {
      known = new Known(s.profile(), found(s));
      KNOWN.put(s.layout(), known);
    }
    return known.saddles;
  }

  private static List<LiftingSaddle> found(Situation s) {
    List<Rest> declared = IndirectNeed.declared(s);
    List<LiftingSaddle> out = new ArrayList<>();
    for (Saddle saddle : IndirectNeed.saddles(s)) {
      IndirectNeed.facts(s, saddle)
          .ifPresent(f -> out.add(new LiftingSaddle(saddle, f, serving(f, declared))));
    }
    return List.copyOf(out);
  }

  private static List<Rest> serving(IndirectRetention facts, List<Rest> declared) {
    return declared.stream()
        .filter(r -> facts.reach(r) > 0)
        .sorted(Comparator.comparingDouble((Rest r) -> -facts.reach(r)))
        .toList();
  }

  /** The retainers on the saddle's own side, then the others, each the farthest first. */
  List<Rest> ownSideFirst() {
    return serving.stream()
        .sorted(Comparator.comparing((Rest r) -> r.tooth().side() != side()))
        .toList();
  }

  /** The side of the saddle; a saddle across the midline counts for that of its first place. */
  Side side() {
    return saddle.span().first().side();
  }
}
