package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.RestSite;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A rest needs thickness; without room it is bitten through or props the bite open. */
public final class RestsHaveRoomAboveThem implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-have-room-above-them",
          "The opposing teeth leave room for the metal of every rest.",
          Severity.MUST,
          Source.read(Literature.BDJ_PREPARATION));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.REST_CLEARANCE_LEAST);
    double good = s.profile().limit(Quantity.REST_CLEARANCE);
    for (Rest r : s.design().all(Rest.class)) {
      if (!s.chart().stands(r.tooth()) || !r.site().existsOn(r.tooth())) {
        continue;
      }
      Double room = s.chart().tooth(r.tooth()).clearances().get(r.site());
      Subject subject = Subject.of(s.arch(), r);
      if (room == null) {
        on.unanswered(ChartField.clearance(r.tooth(), r.site()), subject);
      } else if (room >= good) {
        on.upheld("has " + Amount.mm(room) + " of room for its metal", subject);
      } else {
        boolean bare = room < least;
        Draft d =
            on.finding(r.tooth().toString(), subject)
                .fact("little room above the " + Naming.of(r))
                .measured(Amount.mm(room), Amount.atLeastMm(bare ? least : good))
                .weighing(bare ? Severity.MUST : Severity.SHOULD);
        roomier(s, r, good)
            .ifPresent(
                site -> d.remedy("Move it to the other end of " + r.tooth(), moved(s, r, site)));
        d.done();
      }
    }
  }

  /** The occlusal site at the other end, when it was measured and has room. */
  private static Optional<RestSite> roomier(Situation s, Rest r, double good) {
    return r.site()
        .end()
        .filter(e -> r.site().isOcclusal())
        .map(e -> RestSite.occlusal(e.opposite()))
        .filter(x -> s.chart().tooth(r.tooth()).clearances().getOrDefault(x, 0.0) >= good);
  }

  private static DesignEdit moved(Situation s, Rest r, RestSite site) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(r.withSite(site)));
    NewRest.strut(s, r.tooth(), site).ifPresent(m -> edits.add(new DesignEdit.Place(m)));
    return new DesignEdit.Several(edits);
  }
}
