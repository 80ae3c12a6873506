package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.geometry.Vector;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.RotationAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The axis of a Class II runs on a slant; the long way off it lies on the side with teeth. */
public final class ClassTwoIndirectRetainersStandOnTheDentateSide implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-two-indirect-retainers-stand-on-the-dentate-side",
          "In Class II the indirect retainer stands on the side with teeth, at about a right angle"
              + " to the slanting axis.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.INDIRECT_SLIDES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.II) {
      return;
    }
    for (LiftingSaddle lifting : LiftingSaddle.all(s)) {
      List<Rest> there =
          lifting.serving().stream().filter(r -> r.tooth().side() != lifting.side()).toList();
      there.forEach(
          r ->
              on.upheld(
                  "stands across from "
                      + Naming.of(lifting.saddle())
                      + ", at "
                      + Amount.degrees(angle(s, lifting, r))
                      + " to the "
                      + s.profile().axis().words(),
                  Subject.of(s.arch(), r)));
      if (there.isEmpty() && !lifting.serving().isEmpty()) {
        misplaced(s, lifting, on);
      }
    }
  }

  private static void misplaced(Situation s, LiftingSaddle lifting, Judging on) {
    Rest r = lifting.serving().get(0);
    Draft d =
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact(
                "indirect retainer on the side of "
                    + Naming.of(lifting.saddle())
                    + ", where the slanting axis leaves it a short lever")
            .measured("0 on the side with teeth", "1 on the side with teeth");
    IndirectSite.all(s, lifting.facts()).stream()
        .filter(x -> x.tooth().side() != lifting.side())
        .limit(2)
        .forEach(x -> d.remedy(x.label(), x.edit(s)));
    d.done();
  }

  /** Between the axis and the way from its middle to the seat, 0 to 90. */
  private static double angle(Situation s, LiftingSaddle lifting, Rest r) {
    RotationAxis axis = lifting.facts().axis();
    Vector along = axis.from().to(axis.to()).unit();
    Vector way = axis.from().midpoint(axis.to()).to(Bearings.seat(s.layout(), r)).unit();
    return Math.toDegrees(Math.asin(Math.min(1, Math.abs(along.cross(way)))));
  }
}
