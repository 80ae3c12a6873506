package saddlewright.rules.undercut;

import java.util.Comparator;
import java.util.stream.Collectors;
import saddlewright.chart.ChartField;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** A tip that reaches no undercut holds nothing. */
public final class TipsEndInUndercuts implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tips-end-in-undercuts",
          "Every retentive tip ends in an undercut that the survey found.",
          Severity.MUST,
          Source.read(
              "teaching text on survey and path of insertion: no retention from tilt alone"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      SurveyedTooth survey = SurveyedTooth.of(s, c.tooth());
      Subject subject = Subject.of(s.arch(), c);
      if (survey.holds(c.tip())) {
        on.upheld(
            "ends in the "
                + ToothNames.zone(c.tooth(), c.tip())
                + " undercut that the survey found",
            subject);
      } else if (!survey.undercut().isEmpty()) {
        elsewhere(on, c, survey, subject);
      } else if (!survey.isCharted(c.tip())) {
        on.unanswered(ChartField.undercut(c.tooth(), c.tip()), subject);
      } else {
        // No undercut on the whole tooth: that one has to be made is said elsewhere.
        on.judged();
      }
    }
  }

  private static void elsewhere(Judging on, Clasp c, SurveyedTooth survey, Subject subject) {
    Draft d =
        on.finding(c.tooth().toString(), subject)
            .fact("the " + Naming.of(c) + " ends where the survey found no undercut")
            .measured(
                ToothNames.zone(c.tooth(), c.tip()),
                survey.undercut().stream()
                    .map(z -> ToothNames.zone(c.tooth(), z))
                    .collect(Collectors.joining(" or ", "", ", where one is charted")));
    Comparator<Zone> sameFaceFirst = Comparator.comparing(z -> z.face() != c.tip().face());
    survey.undercut().stream()
        .sorted(sameFaceFirst)
        .forEach(
            z ->
                d.remedy(
                    "Move the tip to the " + ToothNames.zone(c.tooth(), z) + " undercut",
                    new DesignEdit.Change(ReshapedClasp.tipped(c, z))));
    d.done();
  }
}
