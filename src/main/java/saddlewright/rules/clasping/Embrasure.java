package saddlewright.rules.clasping;

import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.rules.Situation;
import saddlewright.rules.StandingClasps;

/** The other half of an embrasure clasp. */
final class Embrasure {
  private Embrasure() {}

  static Optional<Clasp> partner(Situation s, Clasp c) {
    return c.tooth()
        .neighbour(c.origin())
        .flatMap(
            t ->
                StandingClasps.on(s, t).stream()
                    .filter(x -> x.form() == ClaspForm.EMBRASURE)
                    .filter(x -> x.origin() == t.endTowards(c.tooth()))
                    .findFirst());
  }
}
