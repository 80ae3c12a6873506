package saddlewright.rules.clasping;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;

/** An embrasure clasp grips too firmly to follow a saddle that sinks. */
public final class EmbrasureClaspsStandOnTheToothedSide implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-clasps-stand-on-the-toothed-side",
          "An embrasure clasp stands on the side without a free end, never in front of one.",
          Severity.MUST,
          Source.read(Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<TerminalAbutment> ends = TerminalAbutment.all(s);
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form() != ClaspForm.EMBRASURE) {
        continue;
      }
      Optional<TerminalAbutment> here =
          ends.stream().filter(a -> a.tooth().side() == c.tooth().side()).findFirst();
      if (here.isPresent()) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the " + Naming.of(c) + " stands on the side of a free end")
            .measured("in front of " + Naming.of(here.get().saddle()), "the side without one")
            .done();
      } else {
        on.judged();
      }
    }
  }
}
