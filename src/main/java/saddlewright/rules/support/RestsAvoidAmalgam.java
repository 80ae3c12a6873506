package saddlewright.rules.support;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Condition;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Amalgam flows and breaks under a rest; enamel, composite and cast metal do not. */
public final class RestsAvoidAmalgam implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-avoid-amalgam",
          "A rest does not sit in amalgam.",
          Severity.CONSIDER,
          Source.read(Literature.REST_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Rest r : s.design().all(Rest.class)) {
      if (r.seat() != Rest.Seat.RESTORATION || !s.chart().stands(r.tooth())) {
        continue;
      }
      Optional<Condition> found = s.chart().tooth(r.tooth()).condition();
      Subject subject = Subject.of(s.arch(), r);
      if (found.isEmpty()) {
        on.unanswered(ChartField.condition(List.of(r.tooth())), subject);
      } else if (found.get() == Condition.AMALGAM) {
        on.finding(r.tooth().toString(), subject)
            .fact("the seat of the " + Naming.of(r) + " lies in amalgam")
            .measured("amalgam", "enamel, composite, an inlay or a crown")
            .remedy(
                "Make the seat composite", new DesignEdit.Change(r.withSeat(Rest.Seat.COMPOSITE)))
            .done();
      } else {
        on.upheld("has its seat in a restoration that bears load", subject);
      }
    }
  }
}
