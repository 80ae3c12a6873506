package saddlewright.rules.support;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Metal through an embrasure wedges the teeth apart unless both marginal ridges carry it. */
public final class EmbrasureRestsComeInPairs implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-rests-come-in-pairs",
          "Where metal runs through an embrasure, both neighbouring marginal ridges carry a rest.",
          Severity.MUST,
          Source.read(Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Component c : s.design().components()) {
      if (c instanceof Clasp k && k.form() == ClaspForm.EMBRASURE) {
        weigh(s, c, k.tooth(), k.origin(), on);
      } else if (c instanceof Rest r && r.form() == Rest.Form.EMBRASURE && r.site().isOcclusal()) {
        weigh(s, c, r.tooth(), r.site().end().orElseThrow(), on);
      }
    }
  }

  private static void weigh(Situation s, Component c, Tooth tooth, End end, Judging on) {
    Optional<Tooth> beside = tooth.neighbour(end).filter(s.chart()::stands);
    if (beside.isEmpty()) {
      return;
    }
    Tooth n = beside.get();
    RestSite site = n.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(n.endTowards(tooth));
    List<Rest> rests =
        s.design().stream(Rest.class).filter(r -> r.tooth() == n && r.site() == site).toList();
    for (Rest r : rests) {
      on.upheld("keeps the metal from wedging " + tooth + " and " + n, Subject.of(s.arch(), r));
    }
    if (rests.isEmpty()) {
      on.finding(n.toString(), Subject.of(s.arch(), c))
          .fact("no rest beside the " + Naming.of(c))
          .measured("1 of 2 ridges rested", "both rested")
          .remedy(NewRest.label(n, site), NewRest.edit(s, n, site))
          .done();
    }
  }
}
