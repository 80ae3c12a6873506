package saddlewright.rules.clasping;

import saddlewright.chart.ChartField;
import saddlewright.dentition.RestSite;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** The body of an embrasure clasp crosses the contact between two teeth in closure. */
public final class EmbrasureClaspsHaveRoom implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-clasps-have-room",
          "The opposing teeth leave at least 1.5 mm for the body of an embrasure clasp.",
          Severity.MUST,
          Source.fromMemory(
              "common teaching on embrasure clasps: 1.5 mm, with a channel cut for it"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.EMBRASURE_ROOM);
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form() != ClaspForm.EMBRASURE || c.tooth().isAnterior()) {
        continue;
      }
      RestSite site = RestSite.occlusal(c.origin());
      Double room = s.chart().tooth(c.tooth()).clearances().get(site);
      if (room == null) {
        on.unanswered(ChartField.clearance(c.tooth(), site), Subject.of(s.arch(), c));
      } else if (room < least) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("little room for the " + Naming.of(c) + " to cross the embrasure")
            .measured(Amount.mm(room), Amount.atLeastMm(least))
            .done();
      } else {
        on.upheld("has " + Amount.mm(room) + " to cross the embrasure", Subject.of(s.arch(), c));
      }
    }
  }
}
