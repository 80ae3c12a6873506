package saddlewright.rules.placing;

import saddlewright.design.Clasp;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Every part that meets a tooth gathers plaque and is one more to fit. */
public final class DesignsAreKeptSimple implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "designs-are-kept-simple",
          "A denture has no more rests, clasps and minor connectors than it needs.",
          Severity.CONSIDER,
          Source.read(Literature.BDJ_CONNECTORS + "; " + Literature.SIMPLICITY));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    long parts =
        s.design().components().stream()
            .filter(c -> c instanceof Rest || c instanceof Clasp || c instanceof MinorConnector)
            .count();
    if (parts == 0) {
      return;
    }
    double most = s.profile().limit(Quantity.PARTS_ON_TEETH);
    if (parts <= most) {
      on.judged();
      return;
    }
    on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
        .fact("many rests, clasps and minor connectors")
        .measured(Amount.of(parts, "part"), "at most " + Amount.of((long) most, "part"))
        .done();
  }
}
