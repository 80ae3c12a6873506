package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
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
    for (Tooth t : Tooth.in(s.arch())) {
      List<Clasp> clasps = s.design().stream(Clasp.class).filter(c -> c.tooth() == t).toList();
      if (clasps.size() > 1) {
        Draft d =
            on.finding(t.toString(), Subject.of(t))
                .fact("more than one retentive arm on the tooth")
                .measured(Amount.of(clasps.size(), "arm"), "1 arm");
        for (Clasp kept : clasps) {
          d.remedy("Keep the " + words(kept) + " alone", keep(kept, clasps));
        }
        d.done();
      } else if (!clasps.isEmpty()) {
        on.judged();
      }
    }
  }

  private static String words(Clasp c) {
    return ToothNames.zone(c.tooth(), c.tip()) + " " + Naming.of(c);
  }

  private static DesignEdit keep(Clasp kept, List<Clasp> clasps) {
    List<DesignEdit> edits = new ArrayList<>();
    clasps.stream()
        .filter(c -> !c.id().equals(kept.id()))
        .forEach(c -> edits.add(new DesignEdit.Remove(c.id())));
    return new DesignEdit.Several(edits);
  }
}
