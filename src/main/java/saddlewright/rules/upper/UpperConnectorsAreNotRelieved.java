package saddlewright.rules.upper;

import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The palate is there to be touched: a gap under the metal gives away support and traps food. */
public final class UpperConnectorsAreNotRelieved implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-connectors-are-not-relieved",
          "An upper connector touches the palate; it is relieved only over a torus, the"
              + " raphe, the papilla and where it crosses gums.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.NORTH_AMERICAN_CARDS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.UPPER) {
      return;
    }
    for (Relief r : s.design().all(Relief.class)) {
      boolean everywhere = r.area() == Relief.Area.UNDER_LOWER_CONNECTOR;
      boolean needless =
          r.area() == Relief.Area.PALATAL_TORUS && !PalatalToriAreSpared.isCharted(s);
      if (r.thickness() > 0 && (everywhere || needless)) {
        on.finding(Naming.of(r), Subject.of(s.arch(), r))
            .fact(
                everywhere
                    ? "lifts the connector off the palate"
                    : "spares a torus that is not charted")
            .measured(
                Amount.mm(r.thickness()), everywhere ? "contact" : "contact, or a charted torus")
            .remedy("Take the relief away", new DesignEdit.Remove(r.id()))
            .done();
      } else {
        on.judged();
      }
    }
  }
}
