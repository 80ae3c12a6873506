package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** Each alloy has the depth of undercut in which it springs without being overstrained. */
public final class UndercutsSuitTheMaterial implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "undercuts-suit-the-material",
          "The charted undercut at a tip is as deep as the material of the arm asks for.",
          Severity.MUST,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      Optional<Double> asked = Depths.asked(s, c.material());
      SurveyedTooth survey = SurveyedTooth.of(s, c.tooth());
      if (asked.isEmpty()) {
        continue;
      }
      if (!survey.isCharted(c.tip()) && survey.undercut().isEmpty()) {
        on.unanswered(ChartField.undercut(c.tooth(), c.tip()), Subject.of(s.arch(), c));
      } else if (survey.holds(c.tip())) {
        judge(s, on, c, survey.at(c.tip()).orElseThrow().depth(), asked.get());
      }
    }
  }

  private static void judge(Situation s, Judging on, Clasp c, double depth, double asked) {
    if (Depths.suits(s, depth, asked)) {
      on.upheld(
          "springs in " + Amount.mm(depth) + " of undercut, as its material asks",
          Subject.of(s.arch(), c));
      return;
    }
    boolean deep = depth > asked;
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("undercut too " + (deep ? "deep" : "shallow") + " for the " + Naming.of(c))
            .measured(Amount.mm(depth), Amount.mm(asked));
    if (c.form().isOcclusallyApproaching()) {
      other(s, depth)
          .ifPresent(
              m -> d.remedy("Change its material", new DesignEdit.Change(ReshapedClasp.of(c, m))));
    }
    SurveyedTooth survey = SurveyedTooth.of(s, c.tooth());
    survey.undercut(c.tip().face()).stream()
        .filter(z -> Depths.suits(s, survey.at(z).orElseThrow().depth(), asked))
        .forEach(
            z ->
                d.remedy(
                    "Move the tip to the " + ToothNames.zone(c.tooth(), z) + " undercut",
                    new DesignEdit.Change(ReshapedClasp.tipped(c, z))));
    d.done();
  }

  private static Optional<ClaspMaterial> other(Situation s, double depth) {
    for (ClaspMaterial m : ClaspMaterial.values()) {
      if (Depths.asked(s, m).filter(a -> Depths.suits(s, depth, a)).isPresent()) {
        return Optional.of(m);
      }
    }
    return Optional.empty();
  }
}
