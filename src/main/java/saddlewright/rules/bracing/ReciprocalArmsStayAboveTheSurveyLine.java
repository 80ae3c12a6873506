package saddlewright.rules.bracing;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Zone;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A rigid arm cannot pass into an undercut: where the bulge is high there is no place for it. */
public final class ReciprocalArmsStayAboveTheSurveyLine implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "reciprocal-arms-stay-above-the-survey-line",
          "A reciprocal arm lies above the survey line, where gingival and middle third meet.",
          Severity.MUST,
          Source.read(
              "teaching notes on clasp arms (two sets); for high survey lines "
                  + Literature.ELIASON));

  /** Depth from which an undercut keeps a rigid arm out, mm: half of what springs a cast tip. */
  private static final double DEEP = 0.125;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (ReciprocalArm a : s.design().all(ReciprocalArm.class)) {
      ToothFindings found = s.chart().tooth(a.tooth());
      double third = found.crownHeight().orElse(CrownSize.mean(a.tooth()).height()) / 3;
      for (Zone z : passed(a)) {
        Undercut u = found.undercuts().get(z);
        if (u != null && u.depth() >= DEEP) {
          weigh(s, a, z, u, third, on);
          break;
        }
      }
    }
  }

  private static void weigh(
      Situation s, ReciprocalArm a, Zone z, Undercut u, double third, Judging on) {
    Subject arm = Subject.of(s.arch(), a);
    if (u.height().isEmpty()) {
      on.unanswered(ChartField.undercutHeight(a.tooth(), z), arm);
    } else if (u.height().get() <= third) {
      on.upheld("lies above the undercut of its face, which is low on the crown", arm);
    } else {
      Draft d =
          on.finding(a.tooth().toString(), arm)
              .fact(
                  "the survey line is high where the reciprocal arm runs; a rigid arm cannot enter"
                      + " the undercut of "
                      + Amount.mm(u.depth()))
              .measured(
                  "undercut " + Amount.mm(u.height().get()) + " above the margin",
                  "at most " + Amount.mm(third));
      PlateInstead.of(s, a).ifPresent(e -> d.remedy(PlateInstead.LABEL, e));
      d.done();
    }
  }

  /** The zones that the arm passes or ends beside. */
  private static List<Zone> passed(ReciprocalArm a) {
    return List.of(
        Zone.of(a.face(), Optional.of(a.origin())),
        Zone.of(a.face(), Optional.empty()),
        Zone.of(a.face(), Optional.of(a.origin().opposite())));
  }
}
