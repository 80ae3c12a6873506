package saddlewright.rules.indirect;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothStatus;
import saddlewright.classification.Classification;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.ClaspAxis;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.mechanics.RotationAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
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

/** Where a doubtful tooth holds up the end of a saddle, its loss must not undo the denture. */
public final class DoubtfulTeethAreDesignedForLoss implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "doubtful-teeth-are-designed-for-loss",
          "Where the loss of a doubtful tooth would make a free end, the denture already has an"
              + " indirect retainer against it.",
          Severity.SHOULD,
          Source.read(Literature.INDIRECT_SLIDES + "; " + Literature.WESTERN_AUSTRALIA));

  private static final int AXIS = 2;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    for (Tooth t : s.chart().standing()) {
      if (!s.chart().tooth(t).doubtful()) {
        continue;
      }
      Optional<Saddle> carried = carried(s, t);
      if (carried.isPresent()) {
        if (makesAFreeEnd(s, t)) {
          weigh(s, t, carried.get(), on);
        } else {
          on.judged();
        }
      }
    }
  }

  /** The saddle that the tooth bounds. */
  private static Optional<Saddle> carried(Situation s, Tooth t) {
    return AreaSupport.all(s).stream()
        .filter(a -> a.ends().stream().anyMatch(e -> e.abutment() == t))
        .map(AreaSupport::saddle)
        .findFirst();
  }

  /** Classified again as if the tooth were lost and replaced. */
  private static boolean makesAFreeEnd(Situation s, Tooth t) {
    ArchChart after =
        s.chart()
            .with(
                t,
                s.chart().tooth(t).withStatus(ToothStatus.MISSING).withGap(GapDecision.REPLACED));
    Set<Tooth> abutments = EnumSet.noneOf(Tooth.class);
    after.standing().stream().filter(s.design()::usesAsAbutment).forEach(abutments::add);
    return Classification.of(after, abutments)
        .areaAt(t)
        .filter(EdentulousArea::freeEnd)
        .isPresent();
  }

  private static void weigh(Situation s, Tooth t, Saddle saddle, Judging on) {
    List<Point> tips =
        s.design().stream(Clasp.class)
            .filter(c -> c.tooth() != t && s.chart().stands(c.tooth()))
            .map(c -> Bearings.tip(s.layout(), c))
            .toList();
    Point load = Bearings.artificialTooth(s.layout(), t);
    Optional<RotationAxis> axis = ClaspAxis.of(tips, List.of(load));
    if (tips.size() < AXIS) {
      on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle), Subject.of(t))
          .fact(
              "the loss of "
                  + t
                  + " makes it a free end, with too few clasps left to hold the axis")
          .measured(
              Amount.of(tips.size(), "clasp") + " left", "at least " + Amount.of(AXIS, "clasp"))
          .done();
    } else if (axis.isEmpty()) {
      on.judged();
    } else {
      weigh(s, t, saddle, axis.get(), load, on);
    }
  }

  private static void weigh(
      Situation s, Tooth t, Saddle saddle, RotationAxis axis, Point load, Judging on) {
    double least = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    List<Rest> beyond =
        s.design().stream(Rest.class)
            .filter(r -> r.tooth() != t && s.chart().stands(r.tooth()))
            .filter(r -> axis.beyond(Bearings.seat(s.layout(), r), load) >= least)
            .toList();
    Optional<Rest> retainer = beyond.stream().filter(Rest::indirectRetainer).findFirst();
    if (retainer.isPresent()) {
      on.upheld(
          "will be the indirect retainer if " + t + " is lost",
          Subject.of(s.arch(), retainer.get()));
      return;
    }
    if (!beyond.isEmpty()) {
      unmarked(s, t, saddle, beyond, on);
      return;
    }
    Draft d =
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle), Subject.of(t))
            .fact(
                "the loss of "
                    + t
                    + " makes it a free end, and no rest lies beyond the clasps left")
            .measured(
                "0 rests " + Amount.mm(least) + " or more beyond them", "1 rest, planned now");
    IndirectSite.best(s, new IndirectRetention(axis, load, List.of())).stream()
        .filter(x -> x.distance() >= least && x.tooth() != t)
        .forEach(x -> d.remedy(NewRest.label(x.tooth(), x.site()), x.plain(s)));
    d.done();
  }

  private static void unmarked(Situation s, Tooth t, Saddle saddle, List<Rest> beyond, Judging on) {
    Draft d =
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle), Subject.of(t))
            .fact(
                "the loss of "
                    + t
                    + " makes it a free end; a rest could then serve as indirect retainer but is"
                    + " not marked as one")
            .measured("0 marked", "1 marked")
            .weighing(Severity.CONSIDER);
    beyond.forEach(
        r ->
            d.remedy(
                "Mark the " + Naming.of(r) + " as indirect retainer",
                new DesignEdit.Change(r.asIndirectRetainer())));
    d.done();
  }
}
