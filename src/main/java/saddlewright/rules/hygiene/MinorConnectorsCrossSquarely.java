package saddlewright.rules.hygiene;

import java.util.OptionalDouble;
import saddlewright.design.MinorConnector;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The shortest way over the gum is straight across it. */
public final class MinorConnectorsCrossSquarely implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "minor-connectors-cross-squarely",
          "A minor connector crosses the gingival margin at a right angle.",
          Severity.SHOULD,
          Source.read(Literature.NORTH_AMERICAN_CARDS + "; teaching notes on minor connectors"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.CROSSING);
    for (Laid l : s.layout().all(MinorConnector.class)) {
      OptionalDouble degrees = l.measure(Measure.CROSSING_DEGREES);
      if (degrees.isEmpty() || l.body().isEmpty()) {
        continue;
      }
      Subject strut = Subject.of(s.arch(), l.component());
      if (degrees.getAsDouble() < least) {
        on.finding(Naming.of(l.component()), strut)
            .fact("crosses the gingival margin at a slant")
            .measured(
                Math.round(degrees.getAsDouble()) + "°", "at least " + Math.round(least) + "°")
            .done();
      } else {
        on.upheld("crosses the gingival margin squarely", strut);
      }
    }
  }
}
