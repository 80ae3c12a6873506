package saddlewright.rules.retention;

import java.util.Optional;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Side;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
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
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** A denture that is held harder on one side twists as it is taken out. */
public final class GripIsEvenOnBothSides implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "grip-is-even-on-both-sides",
          "Clasps on the same tooth of both sides approach alike, in like material and like"
              + " undercut.",
          Severity.CONSIDER,
          Source.read(Literature.MCCRACKEN_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp right : StandingClasps.on(s, Side.RIGHT)) {
      for (Clasp left : StandingClasps.on(s, right.tooth().mirrored())) {
        judge(s, on, right, left);
      }
    }
  }

  private static void judge(Situation s, Judging on, Clasp right, Clasp left) {
    if (isEven(s, right, left)) {
      on.upheld(
          "grips as the " + Naming.of(left) + " does across the arch", Subject.of(s.arch(), right));
      on.upheld(
          "grips as the " + Naming.of(right) + " does across the arch", Subject.of(s.arch(), left));
      return;
    }
    Draft d =
        on.finding(
                right.tooth() + " and " + left.tooth(),
                Subject.of(s.arch(), right),
                Subject.of(s.arch(), left))
            .fact("the two clasps do not grip alike")
            .measured(grip(s, right) + "; " + grip(s, left), "the same on both sides");
    offer(s, d, right, left);
    offer(s, d, left, right);
    d.done();
  }

  private static void offer(Situation s, Draft d, Clasp model, Clasp copy) {
    Clasp like = model.mirrored(copy.id());
    boolean found = SurveyedTooth.of(s, copy.tooth()).holds(like.tip());
    if (found && isEven(s, model, like)) {
      d.remedy("Clasp " + copy.tooth() + " like " + model.tooth(), new DesignEdit.Change(like));
    }
  }

  private static boolean isEven(Situation s, Clasp one, Clasp other) {
    Optional<Double> a = depth(s, one);
    Optional<Double> b = depth(s, other);
    boolean alike =
        a.isEmpty()
            || b.isEmpty()
            || Math.abs(a.get() - b.get()) <= s.profile().limit(Quantity.UNDERCUT_LATITUDE) + 1e-9;
    return one.form().isOcclusallyApproaching() == other.form().isOcclusallyApproaching()
        && one.material() == other.material()
        && alike;
  }

  private static Optional<Double> depth(Situation s, Clasp c) {
    return SurveyedTooth.of(s, c.tooth()).at(c.tip()).map(Undercut::depth);
  }

  private static String grip(Situation s, Clasp c) {
    return (c.material().isWrought() ? "wrought " : "")
        + Naming.of(c)
        + depth(s, c).map(d -> " in " + Amount.mm(d)).orElse("");
  }
}
