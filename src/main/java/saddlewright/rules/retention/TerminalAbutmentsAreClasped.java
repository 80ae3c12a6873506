package saddlewright.rules.retention;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;

/** A free-end saddle is held down where it begins. */
public final class TerminalAbutmentsAreClasped implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "terminal-abutments-are-clasped",
          "The abutment of a free-end saddle, or the tooth next to it, bears a clasp.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (TerminalAbutment a : TerminalAbutment.all(s)) {
      Tooth t = a.tooth();
      Optional<Tooth> next = t.neighbour(a.facing().opposite());
      List<Clasp> holding =
          s.design().stream(Clasp.class)
              .filter(c -> c.tooth() == t || next.equals(Optional.of(c.tooth())))
              .toList();
      if (!holding.isEmpty()) {
        on.upheld(
            "holds down " + Naming.of(a.saddle()) + " where it begins",
            StandingClasps.subjects(s, holding));
        continue;
      }
      Draft d =
          on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
              .fact("no clasp on its terminal abutment " + t)
              .measured("0 clasps", "1 clasp");
      NewClasp.edit(s, t).ifPresent(e -> d.remedy(NewClasp.label(t), e));
      d.done();
    }
  }
}
