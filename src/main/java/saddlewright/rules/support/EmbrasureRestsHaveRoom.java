package saddlewright.rules.support;

import saddlewright.chart.ChartField;
import saddlewright.dentition.RestSite;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Metal across two marginal ridges breaks there unless it is thick. */
public final class EmbrasureRestsHaveRoom implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-rests-have-room",
          "Metal that passes through an embrasure has more room than a rest that ends in one.",
          Severity.MUST,
          Source.fromMemory(Literature.BDJ_PREPARATION));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.EMBRASURE_ROOM);
    for (Rest r : s.design().all(Rest.class)) {
      if (r.form() != Rest.Form.EMBRASURE || !r.site().isOcclusal() || isOfClasp(s, r)) {
        continue;
      }
      Double room = s.chart().tooth(r.tooth()).clearances().get(r.site());
      Subject subject = Subject.of(s.arch(), r);
      if (room == null) {
        on.unanswered(ChartField.clearance(r.tooth(), r.site()), subject);
      } else if (room < least) {
        on.finding(r.tooth().toString(), subject)
            .fact("little room for metal through the embrasure at the " + Naming.of(r))
            .measured(Amount.mm(room), Amount.atLeastMm(least))
            .done();
      } else {
        on.upheld("has " + Amount.mm(room) + " for metal through the embrasure", subject);
      }
    }
  }

  /** Whether an embrasure clasp runs over it, which has a rule of its own. */
  private static boolean isOfClasp(Situation s, Rest r) {
    return s.design().stream(Clasp.class)
        .anyMatch(
            c ->
                c.form() == ClaspForm.EMBRASURE
                    && c.tooth() == r.tooth()
                    && RestSite.occlusal(c.origin()) == r.site());
  }
}
