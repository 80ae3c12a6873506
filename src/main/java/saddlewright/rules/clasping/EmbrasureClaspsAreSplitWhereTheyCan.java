package saddlewright.rules.clasping;

import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** Two clasps apart hold a side at two places and need no metal through a contact. */
public final class EmbrasureClaspsAreSplitWhereTheyCan implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-clasps-are-split-where-they-can",
          "Two single clasps, one farther forward and one farther back, are preferred to one"
              + " embrasure clasp.",
          Severity.CONSIDER,
          Source.read(Literature.WESTERN_AUSTRALIA + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      Optional<Clasp> partner =
          c.form() == ClaspForm.EMBRASURE ? Embrasure.partner(s, c) : Optional.empty();
      // A pair is spoken of once, at its tooth in front.
      if (partner.isPresent() && c.tooth().position() < partner.get().tooth().position()) {
        on.finding(
                c.tooth() + " and " + partner.get().tooth(),
                Subject.of(s.arch(), c),
                Subject.of(s.arch(), partner.get()))
            .fact("metal through the contact is thin, and both clasps hold at one place")
            .measured("1 embrasure clasp", "2 single clasps apart")
            .done();
      }
    }
  }
}
