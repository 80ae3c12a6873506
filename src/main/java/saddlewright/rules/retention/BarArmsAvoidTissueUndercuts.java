package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    double most = s.profile().limit(Quantity.TISSUE_UNDERCUT);
    List<Finding> out = new ArrayList<>();
    for (Clasp c : s.design().all(Clasp.class)) {
      Double depth = s.chart().softTissues().tissueUndercut().get(c.tooth());
      if (c.form().isGingivallyApproaching() && depth != null && depth > most) {
        out.add(
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " crosses a tissue undercut")
                .measured(Amount.mm(depth), "at most " + Amount.mm(most))
                .remedy(
                    "Approach from above, with a wrought arm",
                    BarArmsHaveRoomInTheSulcus.fromAbove(c))
                .done());
      }
    }
    return out;
  }
}
