package saddlewright.rules.placing;

import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A rest on an unprepared slope pushes its tooth sideways. */
public final class RestsSitOnPreparedSeats implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-sit-on-prepared-seats",
          "Every rest sits on a prepared seat in enamel, composite or a restoration.",
          Severity.MUST,
          Source.read(Literature.BDJ_PREPARATION));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    return s.design().stream(Rest.class)
        .filter(r -> r.seat() == Rest.Seat.UNPREPARED)
        .map(
            r ->
                finding(r.tooth().toString(), Subject.of(s.arch(), r))
                    .fact(Naming.of(r) + " sits on an unprepared surface")
                    .measured("no seat", "a prepared seat")
                    .remedy(
                        "Prescribe a seat in enamel",
                        new DesignEdit.Change(
                            new Rest(
                                r.id(),
                                r.tooth(),
                                r.site(),
                                r.form(),
                                Rest.Seat.PREPARED_ENAMEL,
                                r.indirectRetainer())))
                    .done())
        .toList();
  }
}
