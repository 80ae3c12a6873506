package saddlewright.rules.retention;

import saddlewright.dentition.Face;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** A clasp that shows is a clasp that is not worn. */
public final class ClaspsStayOutOfTheSmile implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasps-stay-out-of-the-smile",
          "No clasp stands on an incisor; on another tooth that shows, an arm from below or at the"
              + " back of the tooth is sought first.",
          Severity.SHOULD,
          Source.read(
              "Tran et al., J Prosthet Dent 2009;102:286-289; Ancowitz 2004; handbook of an alloy"
                  + " maker"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (!Smile.shows(s, c.tooth()) && !c.tooth().isIncisor()) {
        continue;
      }
      boolean hidden = c.tip().face() == Face.LINGUAL || c.form().isGingivallyApproaching();
      if (c.tooth().isIncisor()) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("a clasp on an incisor shows")
            .measured(Naming.of(c), "no clasp on an incisor")
            .done();
      } else if (hidden || c.tip() == Zone.DISTOBUCCAL) {
        on.upheld("is kept out of sight on a tooth that shows", Subject.of(s.arch(), c));
      } else {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the " + Naming.of(c) + " crosses a face that shows")
            .measured("an arm from above", "an arm from below, or a tip at the back of the tooth")
            .weighing(Severity.CONSIDER)
            .remedy(
                "Approach from below",
                new DesignEdit.Change(ReshapedClasp.fromBelow(c, c.origin())))
            .done();
      }
    }
  }
}
