package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Undercut;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** A tip that lies on the margin presses on it each time the denture moves. */
public final class TipsClearTheGingivalMargin implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tips-clear-the-gingival-margin",
          "A retentive tip lies at least 1 mm above the gingival margin.",
          Severity.SHOULD,
          Source.fromMemory("common teaching: a tip in the gingival third, 1 to 1.5 mm clear"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.TIP_MARGIN);
    for (Clasp c : StandingClasps.of(s)) {
      SurveyedTooth survey = SurveyedTooth.of(s, c.tooth());
      if (!survey.holds(c.tip())) {
        continue;
      }
      Optional<Double> height = survey.at(c.tip()).flatMap(Undercut::height);
      if (height.isEmpty()) {
        on.unanswered(ChartField.undercutHeight(c.tooth(), c.tip()), Subject.of(s.arch(), c));
      } else if (height.get() < least) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the tip of the " + Naming.of(c) + " lies close to the gingival margin")
                .measured(Amount.mm(height.get()), Amount.atLeastMm(least));
        survey.undercut(c.tip().face()).stream()
            .filter(z -> survey.at(z).flatMap(Undercut::height).orElse(0.0) >= least)
            .forEach(
                z ->
                    d.remedy(
                        "Move the tip to the " + ToothNames.zone(c.tooth(), z) + " undercut",
                        new DesignEdit.Change(ReshapedClasp.tipped(c, z))));
        d.done();
      } else {
        on.upheld(
            "ends " + Amount.mm(height.get()) + " above the gingival margin",
            Subject.of(s.arch(), c));
      }
    }
  }
}
