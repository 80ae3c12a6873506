package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
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
          "A gingivally approaching arm lies where the buccal sulcus is deep enough and no frenum"
              + " crosses its path.",
          Severity.MUST,
          Source.read(Literature.DALHOUSIE + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    double least = s.profile().limit(Quantity.BAR_ARM_SULCUS);
    for (Clasp c : s.design().all(Clasp.class)) {
      if (!c.form().isGingivallyApproaching()) {
        continue;
      }
      Double depth = s.chart().softTissues().buccalDepth().get(c.tooth());
      boolean frenum = s.chart().softTissues().frena().contains(c.tooth());
      if (frenum || depth != null && depth < least) {
        Draft d =
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact(
                    frenum
                        ? "a frenum lies in the path of the " + Naming.of(c)
                        : "shallow buccal sulcus for the " + Naming.of(c))
                .measured(
                    frenum ? "frenum" : Amount.mm(depth),
                    frenum ? "no frenum" : Amount.atLeastMm(least));
        out.add(d.remedy("Approach from above, with a wrought arm", fromAbove(c)).done());
      }
    }
    return out;
  }

  /** A wrought arm, since bar clasps mostly hold teeth that are too small for a long cast arm. */
  static DesignEdit fromAbove(Clasp c) {
    return new DesignEdit.Change(
        Clasp.of(c.id(), c.tooth(), ClaspForm.COMBINATION, c.tip(), c.origin()));
  }
}
