package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tip that reaches no undercut holds nothing. */
public final class TipsEndInChartedUndercuts implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tips-end-in-charted-undercuts",
          "Every retentive tip ends in an undercut that was found on the survey.",
          Severity.SHOULD,
          Source.read(
              "teaching text on survey and path of insertion: no retention from tilt alone"));

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
    for (Clasp c : s.design().all(Clasp.class)) {
      Map<Zone, Undercut> charted = s.chart().tooth(c.tooth()).undercuts();
      Undercut at = charted.get(c.tip());
      if (s.chart().stands(c.tooth()) && (at == null || at.depth() <= 0)) {
        Draft d =
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact(
                    charted.isEmpty()
                        ? "no undercut is charted for the " + Naming.of(c)
                        : "the " + Naming.of(c) + " ends where no undercut is charted")
                .measured(at == null ? "none charted" : Amount.mm(0), "an undercut at the tip");
        charted.entrySet().stream()
            .filter(e -> e.getKey().face() == c.tip().face() && e.getValue().depth() > 0)
            .map(Map.Entry::getKey)
            .findFirst()
            .ifPresent(
                z ->
                    d.remedy(
                        "Move the tip to the charted undercut",
                        new DesignEdit.Change(
                            new Clasp(c.id(), c.tooth(), c.form(), z, c.origin(), c.material()))));
        out.add(d.done());
      }
    }
    return out;
  }
}
