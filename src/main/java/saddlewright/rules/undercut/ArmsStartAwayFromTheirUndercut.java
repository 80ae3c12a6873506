package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** An arm from above reaches its undercut across the whole face of the tooth. */
public final class ArmsStartAwayFromTheirUndercut implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "arms-start-away-from-their-undercut",
          "An arm from above starts at the end of the tooth away from its undercut; one beside the"
              + " saddle is reached by a bar, a ring or a hairpin.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA + "; North American teaching cards"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      Optional<End> tip = c.tip().end();
      if (c.form().isGingivallyApproaching() || tip.isEmpty()) {
        continue;
      }
      boolean ring = c.form() == ClaspForm.RING;
      if (!ring && c.form() != ClaspForm.BACK_ACTION && tip.get() == c.origin()) {
        hairpin(s, on, c);
      } else if (ring && tip.get() != c.origin()) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the ring ends half way round its tooth")
            .measured(
                ToothNames.end(tip.get()) + " tip",
                "a tip at the " + ToothNames.end(c.origin()) + " end, where it starts")
            .weighing(Severity.SHOULD)
            .remedy(
                "Make it a plain three-arm clasp",
                new DesignEdit.Change(ReshapedClasp.castFromAbove(c)))
            .remedy(
                "Start it at the " + ToothNames.end(tip.get()) + " end",
                new DesignEdit.Change(ReshapedClasp.ring(c, c.tip())))
            .done();
      } else {
        on.upheld(
            ring
                ? "runs round the tooth to an undercut at the end where it starts"
                : "starts at the end away from its undercut",
            Subject.of(s.arch(), c));
      }
    }
  }

  /** A molar's crown may be tall enough for an arm that turns back below itself. */
  private static void hairpin(Situation s, Judging on, Clasp c) {
    boolean molar = c.tooth().isMolar();
    String end = ToothNames.end(c.origin());
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the " + Naming.of(c) + " starts beside its own undercut and must turn back")
            .measured(
                "starts and ends " + (end.equals("mesial") ? "mesially" : "distally"),
                molar
                    ? "a ring, or an arm from the other end"
                    : "a bar, or an arm from the other end")
            .weighing(molar ? Severity.SHOULD : Severity.MUST);
    if (molar) {
      d.remedy("Make it a ring", new DesignEdit.Change(ReshapedClasp.ring(c, c.tip())));
    } else if (c.tip().face() == Face.BUCCAL) {
      d.remedy(
          "Approach from below", new DesignEdit.Change(ReshapedClasp.fromBelow(c, c.origin())));
    }
    d.remedy(
        "Start the arm at the other end",
        new DesignEdit.Change(
            new Clasp(c.id(), c.tooth(), c.form(), c.tip(), c.origin().opposite(), c.material())));
    SurveyedTooth.of(s, c.tooth()).undercut(c.tip().face()).stream()
        .filter(z -> z.end().equals(Optional.of(c.origin().opposite())))
        .forEach(
            z ->
                d.remedy(
                    "Use the " + ToothNames.zone(c.tooth(), z) + " undercut",
                    new DesignEdit.Change(ReshapedClasp.tipped(c, z))));
    d.done();
  }
}
