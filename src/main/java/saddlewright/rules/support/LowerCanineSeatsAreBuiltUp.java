package saddlewright.rules.support;

import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * The lingual face of a lower canine is steep and its enamel thin; a seat cut into it is a slope or
 * a hole.
 */
public final class LowerCanineSeatsAreBuiltUp implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-canine-seats-are-built-up",
          "A cingulum rest on a lower canine sits in a ledge of composite or of a restoration.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.MAZURAT));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER) {
      return;
    }
    for (Rest r : s.design().all(Rest.class)) {
      if (!r.tooth().isCanine() || r.site() != RestSite.CINGULUM) {
        continue;
      }
      if (r.seat() == Rest.Seat.PREPARED_ENAMEL) {
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact("a seat cut in the thin enamel of a lower canine")
            .measured("a seat in enamel", "a ledge of composite")
            .remedy(
                "Build the seat up in composite",
                new DesignEdit.Change(r.withSeat(Rest.Seat.COMPOSITE)))
            .done();
      } else if (r.seat() == Rest.Seat.UNPREPARED) {
        on.judged();
      } else {
        on.upheld(
            "sits on a ledge that is built up, since lower canine enamel is too thin to cut",
            Subject.of(s.arch(), r));
      }
    }
  }
}
