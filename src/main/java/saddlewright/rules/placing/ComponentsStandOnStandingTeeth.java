package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
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
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (Component c : s.design().components()) {
      if (touchesTeeth(c)) {
        List<Tooth> lost = c.teeth().stream().filter(t -> isLost(s, c, t)).toList();
        if (!lost.isEmpty()) {
          out.add(finding(s, c, lost));
        }
      }
    }
    return out;
  }

  private Finding finding(Situation s, Component c, List<Tooth> lost) {
    Tooth t = lost.get(0);
    return finding(t.toString(), Subject.of(s.arch(), c))
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

  /** Plating may pass a place that drift has closed; nothing else can lie there. */
  private static boolean isLost(Situation s, Component c, Tooth t) {
    return s.chart().isLost(t) && !(c instanceof Plating && s.chart().isClosed(t));
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
