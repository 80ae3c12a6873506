package saddlewright.rules.undercut;

import saddlewright.classification.KennedyClass;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;
import saddlewright.rules.TerminalAbutment;

/** A denture that teeth alone carry does not sink, so its clasps need not give way. */
public final class ToothBorneSaddlesTakeCastClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tooth-borne-saddles-take-cast-clasps",
          "On a denture without a free end a molar is clasped with a cast arm where its undercut"
              + " suits one.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean toothBorne =
        s.classification().kennedy() == KennedyClass.III && TerminalAbutment.all(s).isEmpty();
    if (!toothBorne) {
      return;
    }
    for (Clasp c : StandingClasps.of(s)) {
      if (!c.tooth().isMolar() || s.chart().tooth(c.tooth()).visible()) {
        continue;
      }
      if (c.material().isCast()) {
        on.upheld(
            "is cast, since no saddle sinks that it would have to follow", Subject.of(s.arch(), c));
        continue;
      }
      double cast = s.profile().limit(Quantity.UNDERCUT_CAST);
      boolean deep =
          SurveyedTooth.of(s, c.tooth())
              .at(c.tip())
              .filter(u -> u.depth() > cast && !Depths.suits(s, u.depth(), cast))
              .isPresent();
      if (deep) {
        on.judged();
        continue;
      }
      on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
          .fact("a yielding arm on a molar of a tooth-borne denture")
          .measured(
              (c.material().isWrought() ? "wrought " : "polymer ") + Naming.of(c), "a cast arm")
          .remedy(
              "Make the arm cast",
              new DesignEdit.Change(ReshapedClasp.of(c, ClaspMaterial.CAST_COBALT_CHROMIUM)))
          .done();
    }
  }
}
