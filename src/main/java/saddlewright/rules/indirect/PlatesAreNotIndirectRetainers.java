package saddlewright.rules.indirect;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A plate on the slopes of the front teeth slides up them; its terminal rests do the work. */
public final class PlatesAreNotIndirectRetainers implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "plates-are-not-indirect-retainers",
          "A lingual plate, a dental bar or a continuous bar is an indirect retainer only by the"
              + " rests at its ends.",
          Severity.MUST,
          Source.read(Literature.DALHOUSIE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<MajorConnector> plate = s.design().majorConnector().filter(m -> liesOnTeeth(m.form()));
    if (plate.isEmpty()) {
      return;
    }
    double least = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    Subject subject = Subject.of(s.arch(), plate.get());
    for (Saddle saddle : IndirectNeed.saddles(s)) {
      Optional<IndirectRetention> facts = IndirectNeed.facts(s, saddle);
      if (facts.isEmpty()) {
        continue;
      }
      List<IndirectRetention.Reach> beyond =
          facts.get().rests().stream().filter(r -> r.distance() > 0).toList();
      Optional<Rest> end =
          beyond.stream()
              .map(IndirectRetention.Reach::rest)
              .filter(r -> r.indirectRetainer() && plate.get().span().contains(r.tooth()))
              .min(Comparator.comparing(r -> r.tooth().side() != saddle.span().first().side()));
      if (end.isPresent()) {
        on.upheld(
            "gives the " + Naming.of(plate.get()) + " the stop that its slopes cannot give",
            Subject.of(s.arch(), end.get()));
      } else if (beyond.stream().noneMatch(r -> r.distance() >= least)
          && !IndirectSite.all(s, facts.get()).isEmpty()) {
        alone(s, plate.get(), subject, facts.get(), on);
        return;
      } else {
        on.judged();
      }
    }
  }

  private static void alone(
      Situation s, MajorConnector plate, Subject subject, IndirectRetention facts, Judging on) {
    Draft d =
        on.finding(Naming.of(plate), subject)
            .fact("no rest beyond the axis; the metal slides up the slopes of the front teeth")
            .measured("0 rests beyond it", "1 rest at least, better one at each end");
    IndirectSite.best(s, facts).stream()
        .filter(x -> plate.span().contains(x.tooth()))
        .forEach(x -> d.remedy(x.label(), x.edit(s)));
    d.done();
  }

  private static boolean liesOnTeeth(ConnectorForm form) {
    return form == ConnectorForm.LINGUAL_PLATE
        || form == ConnectorForm.DENTAL_BAR
        || form == ConnectorForm.CONTINUOUS_BAR;
  }
}
