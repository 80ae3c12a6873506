package saddlewright.rules.clasping;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A gingivally approaching arm needs a sulcus deep enough to hide it. */
public final class BarArmsHaveRoomInTheSulcus implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-have-room-in-the-sulcus",
          "A gingivally approaching arm lies where the buccal sulcus is deep enough.",
          Severity.MUST,
          Source.read(
              Literature.STEWART_NOTES
                  + "; 7 mm asked for in one set of British undergraduate teaching notes"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.BAR_ARM_SULCUS);
    double ample = s.profile().limit(Quantity.BAR_ARM_SULCUS_AMPLE);
    List<Clasp> uncharted = new ArrayList<>();
    for (Clasp c : BarArms.of(s)) {
      Double depth = s.chart().softTissues().buccalDepth().get(c.tooth());
      if (depth == null) {
        uncharted.add(c);
      } else if (depth < ample) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact(
                    depth < least
                        ? "shallow buccal sulcus for the " + Naming.of(c)
                        : "little room to spare in the buccal sulcus for the " + Naming.of(c))
                .measured(
                    Amount.mm(depth),
                    depth < least
                        ? Amount.atLeastMm(least)
                        : Amount.mm(ample) + " to run well clear of the margin")
                .weighing(depth < least ? Severity.MUST : Severity.CONSIDER);
        BarArms.offerFromAbove(s, d, c);
        d.done();
      } else {
        on.upheld(
            "has " + Amount.mm(depth) + " of buccal sulcus to lie in", Subject.of(s.arch(), c));
      }
    }
    BarArms.ask(s, on, uncharted, ChartField::buccalDepth);
  }
}
