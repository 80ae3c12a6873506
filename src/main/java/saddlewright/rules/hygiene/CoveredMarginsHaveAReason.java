package saddlewright.rules.hygiene;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.dentition.End;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Plating;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Plating that does no work is only a roof for plaque. */
public final class CoveredMarginsHaveAReason implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "covered-margins-have-a-reason",
          "Every tooth that is plated gains something from it.",
          Severity.SHOULD,
          Source.read(Literature.OWALL + "; " + Literature.ORR));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Plating p : s.design().all(Plating.class)) {
      Subject plating = Subject.of(s.arch(), p);
      List<Tooth> standing = p.span().teeth().stream().filter(s.chart()::stands).toList();
      List<Tooth> idle =
          standing.stream()
              .filter(t -> s.layout().gums().isCovered(t, p.id()) && !gains(s, t))
              .toList();
      if (standing.isEmpty()) {
        continue;
      }
      if (idle.isEmpty()) {
        on.upheld("covers only margins of teeth that gain from it", plating);
      } else {
        Draft d =
            on.finding(Naming.of(p), plating)
                .fact("covers gums of teeth that gain nothing from it: " + words(idle))
                .measured(idle.size() == 1 ? "1 such tooth" : idle.size() + " such teeth", "none");
        shortened(s, p, standing)
            .ifPresentOrElse(
                span ->
                    d.remedy(
                        "Shorten it to " + span, new DesignEdit.Change(new Plating(p.id(), span))),
                () -> d.remedy("Take it away", new DesignEdit.Remove(p.id())));
        d.done();
      }
    }
  }

  private static String words(List<Tooth> teeth) {
    return teeth.stream().map(Tooth::toString).collect(Collectors.joining(", "));
  }

  /** The part of the plating that has work to do, when that is in one piece at least. */
  private static Optional<Span> shortened(Situation s, Plating p, List<Tooth> standing) {
    List<Tooth> busy = standing.stream().filter(t -> gains(s, t)).toList();
    if (busy.isEmpty() || busy.get(busy.size() - 1).place() - busy.get(0).place() >= busy.size()) {
      return Optional.empty();
    }
    return Optional.of(Span.of(busy.get(0), busy.get(busy.size() - 1)));
  }

  private static boolean gains(Situation s, Tooth t) {
    boolean bears =
        s.design().components().stream()
            .anyMatch(c -> (c instanceof Rest || c instanceof Clasp) && c.teeth().contains(t));
    boolean beside =
        Stream.of(End.values())
            .flatMap(e -> t.neighbour(e).stream())
            .anyMatch(n -> s.chart().isLost(n) && s.design().saddleAt(n).isPresent());
    boolean loose =
        s.chart().tooth(t).doubtful()
            || s.chart().tooth(t).mobility().filter(g -> g > 0).isPresent();
    return bears || beside || loose;
  }
}
