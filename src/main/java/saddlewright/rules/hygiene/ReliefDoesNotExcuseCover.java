package saddlewright.rules.hygiene;

import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A gap under the metal does not keep plaque off a covered gum. */
public final class ReliefDoesNotExcuseCover implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "relief-does-not-excuse-cover",
          "Relief over the gingival margins is no ground for covering them.",
          Severity.CONSIDER,
          Source.read(Literature.ORR));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.COVERED_MARGINS);
    for (Relief r : s.design().all(Relief.class)) {
      if (r.area() != Relief.Area.GINGIVAL_MARGINS) {
        continue;
      }
      double share = 100 * s.layout().gums().share();
      if (share > most) {
        on.finding(Naming.of(r), Subject.of(s.arch(), r))
            .fact("does not spare the margins that are covered")
            .measured(Math.round(share) + " % covered", "at most " + Math.round(most) + " %")
            .done();
      } else {
        on.upheld("keeps struts from pressing on the gums", Subject.of(s.arch(), r));
      }
    }
  }
}
