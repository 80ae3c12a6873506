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
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Whatever touches a tooth needs one that will stand when the denture is fitted. */
public final class ComponentsStandOnStandingTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "components-stand-on-standing-teeth",
          "Rests, clasps, reciprocal arms, guide plates and minor connectors stand on teeth that"
              + " will be there when the denture is fitted.",
          Severity.MUST,
          Source.commonPractice(
              "anatomy; Applegate: classify and design after planned extractions"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Component c : s.design().components()) {
      if (touchesTeeth(c)) {
        List<Tooth> lost = c.teeth().stream().filter(t -> isLost(s, c, t)).toList();
        if (lost.isEmpty()) {
          on.judged();
        } else {
          find(s, c, lost, on);
        }
      }
    }
  }

  private static void find(Situation s, Component c, List<Tooth> lost, Judging on) {
    Tooth t = lost.get(0);
    on.finding(t.toString(), Subject.of(s.arch(), c))
        .fact(Naming.of(c) + ", " + why(s, t))
        .measured(
            Amount.of(lost.size(), "lost tooth").replace("tooths", "teeth"), "a standing tooth")
        .remedy("Remove the " + Naming.of(c), new DesignEdit.Remove(c.id()))
        .done();
  }

  private static boolean touchesTeeth(Component c) {
    return c instanceof Rest
        || c instanceof Clasp
        || c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof GuidePlane
        || c instanceof MinorConnector
        || c instanceof Plating;
  }

  /** Plating may pass a place that drift has closed; roots have a rule of their own. */
  private static boolean isLost(Situation s, Component c, Tooth t) {
    boolean elsewhere =
        c instanceof Plating
            ? s.chart().isClosed(t)
            : s.chart().tooth(t).status() == ToothStatus.RETAINED_ROOT;
    return s.chart().isLost(t) && !elsewhere;
  }

  private static String why(Situation s, Tooth t) {
    if (s.chart().isClosed(t)) {
      return "but its space is closed";
    }
    return switch (s.chart().tooth(t).status()) {
      case TO_BE_EXTRACTED -> "but the tooth is to be extracted";
      case RETAINED_ROOT -> "but only a root is kept";
      case IMPLANT -> "but an implant lies under the denture there";
      case UNERUPTED -> "but the tooth has not erupted";
      case MISSING, STANDING -> "but the tooth is missing";
    };
  }
}
