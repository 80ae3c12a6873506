package saddlewright.rules.retention;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** Clasps on one side leave the other side free to lift. */
public final class ClaspsHoldBothSides implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasps-hold-both-sides",
          "A denture with clasps has at least one on each side of the arch.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.WESTERN_AUSTRALIA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> clasps = s.design().all(Clasp.class);
    if (clasps.isEmpty()) {
      return;
    }
    for (Side side : Side.values()) {
      List<Clasp> here = clasps.stream().filter(c -> c.tooth().side() == side).toList();
      if (!here.isEmpty()) {
        on.upheld("holds the patient's " + side.code() + " side", StandingClasps.subjects(s, here));
      } else if (s.chart().standing().stream().anyMatch(t -> t.side() == side && !t.isIncisor())) {
        Draft d =
            on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
                .fact("no clasp on the patient's " + side.code())
                .measured("clasps on 1 side", "clasps on both sides");
        rearmostRested(s, side)
            .ifPresent(t -> NewClasp.edit(s, t).ifPresent(e -> d.remedy(NewClasp.label(t), e)));
        d.done();
      }
    }
  }

  /** The rested tooth of a side that lies farthest back and has an undercut. */
  private static Optional<Tooth> rearmostRested(Situation s, Side side) {
    return s.chart().standing().stream()
        .filter(t -> t.side() == side && !SurveyedTooth.of(s, t).undercut().isEmpty())
        .filter(t -> s.design().stream(Rest.class).anyMatch(r -> r.tooth() == t))
        .max(Comparator.comparing(Tooth::position));
  }
}
