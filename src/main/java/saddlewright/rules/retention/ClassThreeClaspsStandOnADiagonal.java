package saddlewright.rules.retention;

import java.util.List;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Clasp;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.RotationAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** Two clasps hold a tooth-borne denture when the line between them runs across it. */
public final class ClassThreeClaspsStandOnADiagonal implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-three-clasps-stand-on-a-diagonal",
          "Two clasps on a Class III denture with a gap on each side stand on a diagonal that"
              + " divides it; otherwise more clasps stand at its corners.",
          Severity.SHOULD,
          Source.fromMemory(
              Literature.BDJ_CLASPS
                  + "; corners: "
                  + Literature.ANKARA
                  + " and "
                  + Literature.WESTERN_AUSTRALIA
                  + ", read"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> clasps = StandingClasps.of(s);
    List<Saddle> saddles = s.design().all(Saddle.class);
    if (s.classification().kennedy() != KennedyClass.III
        || !isGappedOnBothSides(saddles)
        || clasps.stream().map(c -> c.tooth().side()).distinct().count() < 2) {
      return;
    }
    if (clasps.size() > 2) {
      on.upheld("is one of the corners at which the denture is held", subjects(s, clasps));
      return;
    }
    RotationAxis axis =
        new RotationAxis(
            Bearings.tip(s.layout(), clasps.get(0)), Bearings.tip(s.layout(), clasps.get(1)));
    List<Double> sides = saddles.stream().map(x -> axis.distanceTo(middle(s, x))).toList();
    if (sides.stream().anyMatch(d -> d > 0) && sides.stream().anyMatch(d -> d < 0)) {
      on.upheld("stands on a diagonal with a saddle on either side of it", subjects(s, clasps));
      return;
    }
    Draft d =
        on.finding(clasps.get(0).tooth() + " and " + clasps.get(1).tooth(), subjects(s, clasps))
            .fact("the line through the two clasps leaves every saddle on one side of it")
            .measured(
                Amount.of(saddles.size(), "saddle") + " on one side", "saddles on both sides");
    AreaSupport.all(s).stream()
        .flatMap(a -> a.ends().stream())
        .map(EndSupport::abutment)
        .distinct()
        .forEach(
            t -> NewClasp.edit(s, t).ifPresent(e -> d.remedy(NewClasp.label(t) + " as well", e)));
    d.done();
  }

  private static boolean isGappedOnBothSides(List<Saddle> saddles) {
    return saddles.stream()
            .filter(x -> !x.span().crossesMidline())
            .map(x -> x.span().first().side())
            .distinct()
            .count()
        > 1;
  }

  private static Point middle(Situation s, Saddle saddle) {
    Point a = Bearings.artificialTooth(s.layout(), saddle.span().first());
    Point b = Bearings.artificialTooth(s.layout(), saddle.span().last());
    return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
  }

  private static Subject[] subjects(Situation s, List<Clasp> clasps) {
    return StandingClasps.subjects(s, clasps);
  }
}
