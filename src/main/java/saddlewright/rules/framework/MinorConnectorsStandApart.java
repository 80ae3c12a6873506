package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.MinorConnector;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Finding;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Narrow windows between struts hold food and cannot be cleaned. */
public final class MinorConnectorsStandApart implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "minor-connectors-stand-apart",
          "Neighbouring minor connectors stand at least 5 mm apart.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public List<Finding> judge(Situation s) {
    double least = s.profile().limit(Quantity.MINOR_SPACING);
    List<Laid> all =
        s.layout().all(MinorConnector.class).stream().filter(l -> !l.body().isEmpty()).toList();
    List<Finding> out = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        MinorConnector a = (MinorConnector) all.get(i).component();
        MinorConnector b = (MinorConnector) all.get(j).component();
        double gap = all.get(i).body().distanceTo(all.get(j).body());
        // Struts that touch are one strut, such as that of two rests in one embrasure.
        if (gap > Clearance.MEASURING_ERROR_MM && gap < least - Clearance.MEASURING_ERROR_MM) {
          out.add(
              finding(Naming.of(a), Subject.of(s.arch(), a), Subject.of(s.arch(), b))
                  .fact("stands close to the " + Naming.of(b))
                  .measured(Amount.mm(gap), Amount.atLeastMm(least))
                  .done());
        }
      }
    }
    return out;
  }
}
