package saddlewright.rules.support;

import java.util.OptionalDouble;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A rest is thinnest where it crosses the marginal ridge; breadth there keeps it from breaking. */
public final class OcclusalRestsAreBroadEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "occlusal-rests-are-broad-enough",
          "An occlusal rest is broad enough at the marginal ridge not to bend or break.",
          Severity.SHOULD,
          Source.read(Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.REST_WIDTH);
    for (Rest r : s.design().all(Rest.class)) {
      OptionalDouble width =
          s.layout().find(r.id()).map(l -> l.measure(Measure.WIDTH)).orElse(OptionalDouble.empty());
      if (!r.site().isOcclusal() || r.tooth().isAnterior() || width.isEmpty()) {
        continue;
      }
      Subject subject = Subject.of(s.arch(), r);
      if (width.getAsDouble() + Clearance.MEASURING_ERROR_MM >= least) {
        on.upheld("is " + Amount.mm(width.getAsDouble()) + " broad at the ridge", subject);
      } else {
        on.finding(r.tooth().toString(), subject)
            .fact(Naming.of(r) + " is narrow at the marginal ridge")
            .measured(Amount.mm(width.getAsDouble()), Amount.atLeastMm(least))
            .done();
      }
    }
  }
}
