package saddlewright.rules.support;

import java.util.Comparator;
import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Support on one side alone lets the other side drop into the tissues. */
public final class RestsStandOnBothSides implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-stand-on-both-sides",
          "Rests stand on both sides of the arch.",
          Severity.MUST,
          Source.read(Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Rest> rests = s.design().all(Rest.class);
    if (rests.isEmpty() || s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    for (Side side : Side.values()) {
      boolean teeth = s.chart().standing().stream().anyMatch(t -> t.side() == side);
      if (teeth && rests.stream().noneMatch(r -> r.tooth().side() == side)) {
        find(s, side, on);
        return;
      }
    }
    on.judged();
  }

  private static void find(Situation s, Side bare, Judging on) {
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("no rest on the patient's " + (bare == Side.RIGHT ? "right" : "left"))
            .measured("rests on 1 side", "rests on both sides");
    SpareAbutments.of(s).stream()
        .filter(t -> t.side() == bare)
        .min(Comparator.comparingInt(t -> Math.abs(t.position() - 6)))
        .ifPresent(
            t -> {
              RestSite site = SpareAbutments.site(t);
              d.remedy(NewRest.label(t, site), NewRest.edit(s, t, site));
            });
    d.done();
  }
}
