package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      Tooth t = a.ends().get(0).abutment();
      Optional<Tooth> next = t.neighbour(a.ends().get(0).facing().opposite());
      boolean held =
          s.design().stream(Clasp.class)
              .anyMatch(c -> c.tooth() == t || next.equals(Optional.of(c.tooth())));
      if (!held) {
        out.add(
            finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
                .fact("no clasp on its terminal abutment " + t)
                .measured("0 clasps", "1 clasp")
                .done());
      }
    }
    return out;
  }
}
