package saddlewright.rules.clasping;

import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
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
import saddlewright.rules.TerminalAbutment;

/** A molar is long enough for a cast arm from above, which braces better than a bar. */
public final class MolarsTakeArmsFromAbove implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "molars-take-arms-from-above",
          "A molar is clasped from above, save at the start of a free-end saddle.",
          Severity.SHOULD,
          Source.read(
              Literature.STEWART_NOTES + "; also " + Literature.BDJ_CLASPS + ", from memory"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (!c.tooth().isMolar() || TerminalAbutment.at(s, c.tooth()).isPresent()) {
        continue;
      }
      if (c.form().isOcclusallyApproaching()) {
        on.upheld(
            "comes from above, since a molar is long enough for that", Subject.of(s.arch(), c));
        continue;
      }
      boolean besideSaddle = c.tip().end().map(e -> facesSaddle(s, c.tooth(), e)).orElse(false);
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("the molar is clasped from below")
              .measured(
                  Naming.of(c), "an arm from above" + (besideSaddle ? ", such as a ring" : ""));
      if (besideSaddle) {
        d.remedy("Make it a ring", new DesignEdit.Change(ReshapedClasp.ring(c, c.tip())));
      }
      d.remedy(
          "Approach from above, with a cast arm",
          new DesignEdit.Change(ReshapedClasp.castFromAbove(c)));
      d.done();
    }
  }

  private static boolean facesSaddle(Situation s, Tooth tooth, End end) {
    return tooth.neighbour(end).flatMap(s.design()::saddleAt).isPresent();
  }
}
