package saddlewright.rules.support;

import saddlewright.chart.ChartField;
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
    double least = s.profile().limit(Quantity.EMBRASURE_CLEARANCE);
    for (Rest r : s.design().all(Rest.class)) {
      if (r.form() != Rest.Form.EMBRASURE || !r.site().isOcclusal()) {
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
}
