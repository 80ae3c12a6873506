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

/** Over a tissue undercut a bar arm stands off and catches food and cheek. */
public final class BarArmsAvoidTissueUndercuts implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-avoid-tissue-undercuts",
          "No gingivally approaching arm crosses a tissue undercut deeper than 1 mm near the"
              + " margin.",
          Severity.MUST,
          Source.read(
              Literature.DALHOUSIE
                  + "; "
                  + Literature.ELIASON
                  + "; the figure from memory of "
                  + Literature.BDJ_CLASPS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.TISSUE_UNDERCUT);
    List<Clasp> uncharted = new ArrayList<>();
    for (Clasp c : BarArms.of(s)) {
      Double depth = s.chart().softTissues().tissueUndercut().get(c.tooth());
      if (depth == null) {
        uncharted.add(c);
      } else if (depth > most) {
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " crosses a tissue undercut")
                .measured(Amount.mm(depth), "at most " + Amount.mm(most));
        BarArms.offerFromAbove(s, d, c);
        d.done();
      } else {
        on.upheld("lies on tissue without a deep undercut", Subject.of(s.arch(), c));
      }
    }
    BarArms.ask(s, on, uncharted, ChartField::tissueUndercut);
  }
}
