package saddlewright.rules.retention;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
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
import saddlewright.rules.SurveyedTooth;
import saddlewright.rules.TerminalAbutment;

/** One free end is held beside it and across the arch, at most at one more place. */
public final class ClassTwoDenturesHaveTwoOrThreeClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-two-dentures-have-two-or-three-clasps",
          "A Class II denture has two or three clasps: beside the free end, and one or two across"
              + " the arch.",
          Severity.SHOULD,
          Source.read(
              "North American teaching cards; "
                  + Literature.WESTERN_AUSTRALIA
                  + "; "
                  + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> clasps = StandingClasps.of(s);
    if (s.classification().kennedy() != KennedyClass.II || clasps.isEmpty()) {
      return;
    }
    int least = (int) s.profile().limit(Quantity.CLASPS_CLASS_TWO_LEAST);
    int most = (int) s.profile().limit(Quantity.CLASPS_CLASS_TWO);
    int n = clasps.size();
    if (n >= least && n <= most) {
      on.upheld(
          "is one of the " + n + " clasps that hold one free end",
          StandingClasps.subjects(s, clasps));
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("Class II with " + (n > most ? "more" : "fewer") + " clasps than it needs")
            .measured(
                Amount.of(n, "clasp"),
                n > most ? "at most " + most + " clasps" : "at least " + least + " clasps");
    if (n == least - 1) {
      candidate(s)
          .ifPresent(t -> NewClasp.edit(s, t).ifPresent(e -> d.remedy(NewClasp.label(t), e)));
    }
    d.done();
  }

  /** The terminal abutment, or else the unclasped rested tooth farthest back across the arch. */
  private static Optional<Tooth> candidate(Situation s) {
    List<Tooth> terminal = TerminalAbutment.all(s).stream().map(TerminalAbutment::tooth).toList();
    return s.chart().standing().stream()
        .filter(t -> StandingClasps.on(s, t).isEmpty())
        .filter(t -> !SurveyedTooth.of(s, t).undercut().isEmpty())
        .filter(t -> s.design().stream(Rest.class).anyMatch(r -> r.tooth() == t))
        .max(
            Comparator.comparing((Tooth t) -> terminal.contains(t)).thenComparing(Tooth::position));
  }
}
