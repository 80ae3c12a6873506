package saddlewright.rules.clasping;

import java.util.OptionalDouble;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
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

/** A bar that runs slantwise over the gingival margin covers more of it and rubs. */
public final class BarArmsCrossTheMarginSquarely implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-cross-the-margin-squarely",
          "A gingivally approaching arm crosses the gingival margin at a right angle.",
          Severity.SHOULD,
          Source.read(
              "teaching notes on minor connectors, which cross the margin at 90 degrees; said of"
                  + " bar arms in "
                  + Literature.ELIASON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.MARGIN_CROSSING);
    for (Clasp c : s.design().all(Clasp.class)) {
      OptionalDouble degrees =
          s.layout()
              .find(c.id())
              .map(l -> l.measure(Measure.CROSSING_DEGREES))
              .orElse(OptionalDouble.empty());
      if (!c.form().isGingivallyApproaching() || degrees.isEmpty()) {
        continue;
      }
      Subject bar = Subject.of(s.arch(), c);
      String angle = Amount.degrees(degrees.getAsDouble());
      if (degrees.getAsDouble() >= least) {
        on.upheld("crosses the gingival margin at " + angle, bar);
      } else {
        on.finding(c.tooth().toString(), bar)
            .fact(Naming.of(c) + " crosses the gingival margin on a slant")
            .measured(angle, Amount.atLeastDegrees(least))
            .done();
      }
    }
  }
}
