package saddlewright.rules.lower;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A plate on sloping front teeth slides down and pushes them forward unless rests carry it. */
public final class LingualPlatesAreCarriedByRests implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-plates-are-carried-by-rests",
          "A lingual plate or dental bar is carried by a rest on a canine or premolar"
              + " on each side.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.LINGUAL_PLATE, ConnectorForm.DENTAL_BAR)) {
      List<Rest> carriers =
          s.design().stream(Rest.class)
              .filter(r -> r.tooth().isCanine() || r.tooth().isPremolar())
              .toList();
      List<Side> bare =
          Stream.of(Side.values())
              .filter(side -> carriers.stream().noneMatch(r -> r.tooth().side() == side))
              .toList();
      if (bare.isEmpty()) {
        on.upheld(
            "carries the " + c.name(),
            carriers.stream().map(r -> Subject.of(s.arch(), r)).toArray(Subject[]::new));
      } else {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("no rest carries it on a canine or premolar of each side")
                .measured(2 - bare.size() + " of 2 sides carried", "both sides carried");
        List<Tooth> teeth = bare.stream().flatMap(side -> carrier(s, side).stream()).toList();
        if (teeth.size() == bare.size()) {
          d.remedy("Add rests at its ends", rests(s, teeth));
        }
        d.done();
      }
    }
  }

  private static Optional<Tooth> carrier(Situation s, Side side) {
    return s.chart().standing().stream()
        .filter(t -> t.side() == side && (t.isCanine() || t.isPremolar()))
        .min(Comparator.comparingInt(Tooth::position));
  }

  private static DesignEdit rests(Situation s, List<Tooth> teeth) {
    return new DesignEdit.Several(
        teeth.stream()
            .map(
                t ->
                    NewRest.edit(
                        s, t, t.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL))
            .toList());
  }
}
