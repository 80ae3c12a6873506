package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Two tips on one tooth fight each other as the denture seats. */
public final class TeethBearOneRetentiveArm implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "teeth-bear-one-retentive-arm",
          "Only one arm of a clasp unit enters an undercut.",
          Severity.MUST,
          Source.read(Literature.OKLAHOMA));

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
    for (Tooth t : Tooth.in(s.arch())) {
      List<Clasp> clasps = s.design().stream(Clasp.class).filter(c -> c.tooth() == t).toList();
      if (clasps.size() > 1) {
        Draft d =
            finding(t.toString(), Subject.of(t))
                .fact("more than one retentive arm on the tooth")
                .measured(Amount.of(clasps.size(), "arm"), "1 arm");
        d.remedy("Keep the " + Naming.of(clasps.get(0)) + " alone", keepFirst(clasps));
        out.add(d.done());
      }
    }
    return out;
  }

  private static DesignEdit keepFirst(List<Clasp> clasps) {
    List<DesignEdit> edits = new ArrayList<>();
    clasps.stream().skip(1).forEach(c -> edits.add(new DesignEdit.Remove(c.id())));
    return new DesignEdit.Several(edits);
  }
}
