package saddlewright.rules.support;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Two abutments carry three teeth between them; a longer saddle asks for more. */
public final class LongBoundedSaddlesShareTheLoad implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "long-bounded-saddles-share-the-load",
          "A long bounded saddle has further rests, or spreads its load over the ridge.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.TOOTH_BORNE_SPAN);
    for (AreaSupport a : AreaSupport.all(s)) {
      int teeth = SaddleTeeth.of(s, a.saddle()).size();
      if (!a.isBounded() || a.saddle().span().crossesMidline() || teeth <= most) {
        continue;
      }
      List<Rest> further = a.ends().stream().flatMap(e -> e.nextRests().stream()).toList();
      if (!further.isEmpty()) {
        for (Rest r : further) {
          on.upheld("helps to carry the long " + Naming.of(a.saddle()), Subject.of(s.arch(), r));
        }
      } else {
        find(s, a, teeth, most, on);
      }
    }
  }

  private static void find(Situation s, AreaSupport a, int teeth, double most, Judging on) {
    boolean spreads =
        a.saddle().base() == Saddle.Base.ACRYLIC_ON_MESH
            && a.saddle().flange() == Saddle.Flange.FULL;
    Draft d =
        on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
            .fact(
                spreads
                    ? "too long for its two abutments; the ridge takes a share, another rest would"
                        + " help"
                    : "too long for its two abutments alone")
            .measured(
                SaddleTeeth.count(teeth),
                "at most " + SaddleTeeth.count((long) most) + " on two abutments")
            .weighing(spreads ? Severity.CONSIDER : Severity.SHOULD);
    for (EndSupport e : a.ends()) {
      e.abutment()
          .neighbour(e.facing().opposite())
          .filter(t -> s.chart().stands(t) && !t.isIncisor())
          .ifPresent(
              t -> {
                RestSite site =
                    t.isAnterior()
                        ? RestSite.CINGULUM
                        : RestSite.occlusal(t.endTowards(e.abutment()));
                d.remedy(NewRest.label(t, site), NewRest.edit(s, t, site));
              });
    }
    d.done();
  }
}
