package saddlewright.rules.retention;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ToothFindings;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;

/** Two free ends are held by two clasps; more of them only load the teeth that are left. */
public final class ClassOneDenturesHaveTwoClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-one-dentures-have-two-clasps",
          "A Class I denture has two clasps, one on each terminal abutment; a weak one is helped by"
              + " the tooth in front of it.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; design tutorial on Class I by Faraone"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> clasps = StandingClasps.of(s);
    if (s.classification().kennedy() != KennedyClass.I || clasps.isEmpty()) {
      return;
    }
    if (s.chart().standing().size() == 1) {
      on.judged(); // The lone tooth is a finding of its own.
      return;
    }
    List<TerminalAbutment> abutments = TerminalAbutment.all(s);
    List<Clasp> extra =
        clasps.stream()
            .filter(c -> abutments.stream().noneMatch(a -> answersFor(s, a, c.tooth())))
            .toList();
    int wanted = (int) s.profile().limit(Quantity.CLASPS_CLASS_ONE);
    int counted = (int) clasps.stream().filter(c -> !helpsAWeakOne(s, abutments, c)).count();
    if (counted == wanted) {
      on.upheld(
          "is one of the two clasps that two free ends ask for",
          StandingClasps.subjects(s, clasps));
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("Class I with " + (counted > wanted ? "more" : "fewer") + " clasps than it needs")
            .measured(Amount.of(counted, "clasp"), Amount.of(wanted, "clasp"));
    if (counted - extra.size() == wanted) {
      d.remedy(
          "Keep the clasps on the terminal abutments alone",
          new DesignEdit.Several(
              extra.stream().<DesignEdit>map(c -> new DesignEdit.Remove(c.id())).toList()));
    } else if (counted == wanted - 1) {
      abutments.stream()
          .filter(a -> clasps.stream().noneMatch(c -> answersFor(s, a, c.tooth())))
          .map(TerminalAbutment::tooth)
          .findFirst()
          .ifPresent(t -> NewClasp.edit(s, t).ifPresent(e -> d.remedy(NewClasp.label(t), e)));
    }
    d.done();
  }

  /** The terminal abutment, or the tooth in front of it where that helps or replaces it. */
  private static boolean answersFor(Situation s, TerminalAbutment a, Tooth t) {
    boolean next = a.tooth().neighbour(a.facing().opposite()).equals(Optional.of(t));
    return a.tooth() == t
        || next && (isWeak(s, a.tooth()) || StandingClasps.on(s, a.tooth()).isEmpty());
  }

  private static boolean helpsAWeakOne(Situation s, List<TerminalAbutment> all, Clasp c) {
    return all.stream()
        .anyMatch(
            a ->
                a.tooth() != c.tooth()
                    && answersFor(s, a, c.tooth())
                    && !StandingClasps.on(s, a.tooth()).isEmpty());
  }

  private static boolean isWeak(Situation s, Tooth t) {
    ToothFindings f = s.chart().tooth(t);
    return f.doubtful()
        || f.mobility().orElse(0) >= 1
        || f.boneSupportPercent().orElse(100.0) < s.profile().limit(Quantity.BONE_SUPPORT);
  }
}
