package saddlewright.rules.support;

import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Two rests make a line to rock on; three make a triangle to stand on. */
public final class DenturesHaveThreeRests implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dentures-have-three-rests",
          "A denture has at least three rests; four are better.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    long rests = s.design().stream(Rest.class).filter(r -> s.chart().stands(r.tooth())).count();
    double least = s.profile().limit(Quantity.RESTS_PER_DENTURE);
    boolean started = !s.design().all(Saddle.class).isEmpty() && rests > 0;
    if (!started || s.chart().standing().size() < least) {
      return;
    }
    if (rests >= least) {
      on.judged();
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("few rests to stand on")
            .measured(Amount.of(rests, "rest"), "at least " + Amount.of((long) least, "rest"));
    SpareAbutments.offer(s, (int) Math.round(least - rests), d);
    d.done();
  }
}
