package saddlewright.rules.retention;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** Clasps beside an anterior saddle show, and hold it by the shortest lever. */
public final class ClaspsStandBackFromAClassFourSaddle implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasps-stand-back-from-a-class-four-saddle",
          "The clasps of a Class IV denture stand well back from the saddle, never beside it.",
          Severity.SHOULD,
          Source.read(
              Literature.WESTERN_AUSTRALIA
                  + "; handbook of an alloy maker; first molars from memory of "
                  + Literature.BDJ_CLASPS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.IV) {
      return;
    }
    List<Tooth> beside =
        AreaSupport.all(s).stream()
            .filter(a -> a.saddle().span().crossesMidline())
            .flatMap(a -> a.ends().stream())
            .map(EndSupport::abutment)
            .toList();
    for (Clasp c : StandingClasps.of(s)) {
      if (beside.contains(c.tooth())) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " stands beside the anterior saddle")
                .measured("beside the saddle", "a molar, or at least the next premolar");
        molar(s, c.tooth().side())
            .ifPresent(
                t ->
                    d.remedy(
                        NewClasp.label(t) + " instead",
                        DesignEdit.several(
                            new DesignEdit.Remove(c.id()), NewClasp.edit(s, t).get())));
        if (StandingClasps.on(s, c.tooth().side()).size() > 1) {
          d.remedy("Take the " + Naming.of(c) + " away", new DesignEdit.Remove(c.id()));
        }
        d.done();
      } else if (!beside.isEmpty()) {
        on.upheld("stands well back from the anterior saddle", Subject.of(s.arch(), c));
      }
    }
  }

  private static Optional<Tooth> molar(Situation s, Side side) {
    return s.chart().standing().stream()
        .filter(t -> t.side() == side && t.isMolar() && NewClasp.edit(s, t).isPresent())
        .min(Comparator.comparing(Tooth::position));
  }
}
