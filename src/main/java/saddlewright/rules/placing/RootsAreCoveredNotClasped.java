package saddlewright.rules.placing;

import java.util.List;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/** A root has no crown to clasp, but it spares the ridge under the saddle. */
public final class RootsAreCoveredNotClasped implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "roots-are-covered-not-clasped",
          "A retained root carries the saddle over it, and no clasp or rest.",
          Severity.MUST,
          Source.read(Literature.OVERDENTURE_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Tooth> roots =
        s.chart().where(t -> s.chart().tooth(t).status() == ToothStatus.RETAINED_ROOT);
    if (roots.isEmpty()) {
      return;
    }
    for (Component c : s.design().components()) {
      List<Tooth> here = c.teeth().stream().filter(roots::contains).toList();
      if (here.isEmpty()) {
        continue;
      }
      if (c instanceof Saddle) {
        on.upheld(
            "bears on the root of " + ToothList.of(here) + ", which spares the ridge",
            Subject.of(s.arch(), c));
      } else if (needsCrown(c)) {
        on.finding(here.get(0).toString(), Subject.of(s.arch(), c))
            .fact(Naming.of(c) + ", but only a root is kept")
            .measured("a root", "a crown")
            .remedy("Remove the " + Naming.of(c), new DesignEdit.Remove(c.id()))
            .done();
      }
    }
  }

  private static boolean needsCrown(Component c) {
    return c instanceof Rest
        || c instanceof Clasp
        || c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof GuidePlane
        || c instanceof MinorConnector;
  }
}
