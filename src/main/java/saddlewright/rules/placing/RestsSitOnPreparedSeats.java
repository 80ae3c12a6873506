package saddlewright.rules.placing;

import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
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
    for (Rest r : s.design().all(Rest.class)) {
      Subject subject = Subject.of(s.arch(), r);
      if (r.seat() != Rest.Seat.UNPREPARED) {
        on.upheld("sits in a seat " + seat(r.seat()) + ", so it cannot slide", subject);
        continue;
      }
      on.finding(r.tooth().toString(), subject)
          .fact(Naming.of(r) + " sits on an unprepared surface")
          .measured("no seat", "a prepared seat")
          .remedy(
              "Prescribe a seat in " + (isThin(r) ? "composite" : "enamel"),
              new DesignEdit.Change(
                  r.withSeat(isThin(r) ? Rest.Seat.COMPOSITE : Rest.Seat.PREPARED_ENAMEL)))
          .done();
    }
  }

  /** A lower front tooth has too little enamel for a ledge. */
  private static boolean isThin(Rest r) {
    return r.tooth().arch() == Arch.LOWER && r.site() == RestSite.CINGULUM;
  }

  private static String seat(Rest.Seat seat) {
    return switch (seat) {
      case COMPOSITE -> "of composite";
      case RESTORATION -> "in a restoration";
      case PREPARED_ENAMEL, UNPREPARED -> "prepared in enamel";
    };
  }
}
