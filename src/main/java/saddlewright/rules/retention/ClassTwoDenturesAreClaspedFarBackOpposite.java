package saddlewright.rules.retention;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Saddle;
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

/** The farther back the clasp across the arch, the better the clasp axis divides the denture. */
public final class ClassTwoDenturesAreClaspedFarBackOpposite implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-two-dentures-are-clasped-far-back-opposite",
          "Across the arch from a single free end a clasp stands on a molar, as far back as may be.",
          Severity.SHOULD,
          Source.fromMemory(Literature.BDJ_CLASPS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<TerminalAbutment> ends = TerminalAbutment.all(s);
    if (s.classification().kennedy() != KennedyClass.II || ends.isEmpty()) {
      return;
    }
    Saddle freeEnd = ends.get(0).saddle();
    Side opposite =
        freeEnd.span().first().position() > freeEnd.span().last().position()
            ? freeEnd.span().first().side().opposite()
            : freeEnd.span().last().side().opposite();
    Optional<Clasp> rearmost =
        StandingClasps.on(s, opposite).stream()
            .max(Comparator.comparing(c -> c.tooth().position()));
    if (rearmost.isEmpty()) {
      return;
    }
    Clasp c = rearmost.get();
    List<Tooth> molars = molars(s, opposite);
    if (c.tooth().isMolar() || molars.isEmpty()) {
      on.upheld(
          "stands as far back as the teeth allow, across the arch from the free end",
          Subject.of(s.arch(), c));
      return;
    }
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the hindmost clasp across from the free end stands far forward")
            .measured(Naming.of(c), "a clasp on " + either(molars));
    molars.stream()
        .filter(t -> NewClasp.edit(s, t).isPresent())
        .findFirst()
        .ifPresent(t -> d.remedy(NewClasp.label(t) + " as well", NewClasp.edit(s, t).get()));
    d.done();
  }

  /** The standing molars; a third molar only where it serves as an abutment. */
  private static List<Tooth> molars(Situation s, Side side) {
    return s.chart().standing().stream()
        .filter(t -> t.side() == side && t.isMolar())
        .filter(
            t -> t.position() < 8 || s.chart().tooth(t).abutment() || s.design().usesAsAbutment(t))
        .toList();
  }

  private static String either(List<Tooth> teeth) {
    return teeth.stream().map(Tooth::toString).collect(Collectors.joining(" or "));
  }
}
