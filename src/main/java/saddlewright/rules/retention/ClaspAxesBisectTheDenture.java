package saddlewright.rules.retention;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.RotationAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** A denture that lies on one side of its clasp axis swings about it like a flap. */
public final class ClaspAxesBisectTheDenture implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasp-axes-bisect-the-denture",
          "The line through the tips of two clasps runs through the denture, not along its edge.",
          Severity.SHOULD,
          Source.read(
              Literature.BDJ_INDIRECT + "; retention from memory of " + Literature.BDJ_SERIES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> clasps = StandingClasps.of(s);
    if (clasps.size() != 2
        || clasps.get(0).tooth().side() == clasps.get(1).tooth().side()
        || s.classification().kennedy() == KennedyClass.III
        || s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    RotationAxis axis =
        new RotationAxis(
            Bearings.tip(s.layout(), clasps.get(0)), Bearings.tip(s.layout(), clasps.get(1)));
    DoubleSummaryStatistics reach = bearings(s).mapToDouble(axis::distanceTo).summaryStatistics();
    double lesser = Math.max(0, Math.min(reach.getMax(), -reach.getMin()));
    double greater = Math.max(reach.getMax(), -reach.getMin());
    double least = s.profile().limit(Quantity.CLASP_AXIS_REACH);
    Subject[] subjects = StandingClasps.subjects(s, clasps);
    if (lesser < least) {
      on.finding(clasps.get(0).tooth() + " and " + clasps.get(1).tooth(), subjects)
          .fact("the line through the two clasps runs along the edge of the denture")
          .measured(Amount.mm(lesser) + " of it beyond the line", Amount.atLeastMm(least))
          .done();
    } else {
      on.upheld(
          "stands on a clasp axis that divides the denture: it reaches "
              + Amount.mm(greater)
              + " to one side and "
              + Amount.mm(lesser)
              + " to the other",
          subjects);
    }
  }

  /** Where the denture meets teeth and replaces them. */
  private static Stream<Point> bearings(Situation s) {
    return Stream.concat(
        s.design().stream(Rest.class)
            .filter(r -> s.chart().stands(r.tooth()))
            .map(r -> Bearings.seat(s.layout(), r)),
        s.design().stream(Saddle.class)
            .flatMap(x -> x.span().teeth().stream())
            .map(t -> Bearings.artificialTooth(s.layout(), t)));
  }
}
