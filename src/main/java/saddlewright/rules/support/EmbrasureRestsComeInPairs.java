package saddlewright.rules.support;

import java.util.ArrayList;
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
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (Component c : s.design().components()) {
      if (c instanceof Clasp k && k.form() == ClaspForm.EMBRASURE) {
        partner(s, k.tooth(), k.origin()).ifPresent(p -> out.add(finding(s, c, k.tooth(), p)));
      } else if (c instanceof Rest r && r.form() == Rest.Form.EMBRASURE && r.site().isOcclusal()) {
        partner(s, r.tooth(), r.site().end().orElseThrow())
            .ifPresent(p -> out.add(finding(s, c, r.tooth(), p)));
      }
    }
    return out;
  }

  /** The neighbour across the embrasure, when it stands and bears no rest there. */
  private static Optional<Tooth> partner(Situation s, Tooth tooth, End end) {
    return tooth
        .neighbour(end)
        .filter(s.chart()::stands)
        .filter(
            n ->
                s.design().stream(Rest.class)
                    .noneMatch(r -> r.tooth() == n && r.site() == site(n, tooth)));
  }

  private static RestSite site(Tooth neighbour, Tooth tooth) {
    return neighbour.isAnterior()
        ? RestSite.CINGULUM
        : RestSite.occlusal(neighbour.endTowards(tooth));
  }

  private Finding finding(Situation s, Component c, Tooth tooth, Tooth bare) {
    RestSite site = site(bare, tooth);
    return finding(bare.toString(), Subject.of(s.arch(), c))
        .fact("no rest beside the " + Naming.of(c))
        .measured("1 of 2 ridges rested", "both rested")
        .remedy(NewRest.label(bare, site), NewRest.edit(s, bare, site))
        .done();
  }
}
