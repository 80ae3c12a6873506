package saddlewright.layout;

import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;

/** What lies beside a tooth, across places that drift has closed. */
final class Beside {
  private Beside() {}

  /** The next place at an end of a tooth; none behind the last. */
  static Optional<PlacedTooth> place(Ground ground, Tooth tooth, End end) {
    return tooth
        .neighbour(end)
        .flatMap(n -> ground.next(tooth, n.place() - tooth.place()))
        .map(ground::tooth);
  }

  /** Whether a crown stands at that end. */
  static boolean stands(Ground ground, Tooth tooth, End end) {
    return place(ground, tooth, end).filter(p -> ground.chart().stands(p.tooth())).isPresent();
  }
}
