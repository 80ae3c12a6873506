package saddlewright.rules.bracing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Reciprocation;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tooth that is pushed by a clasp is held from the other side. */
public final class EveryClaspIsReciprocated implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "every-clasp-is-reciprocated",
          "Every retentive arm is opposed on the other face of its tooth by an arm, a plate, or a"
              + " guide plate with a minor connector.",
          Severity.MUST,
          Source.read(Literature.NEURONS + "; " + Literature.KROL));

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
      if (s.chart().stands(c.tooth()) && !Reciprocation.of(s, c).isGiven()) {
        Face face = c.tip().face().opposite();
        String side = face == Face.LINGUAL ? inner(c) : "buccal";
        ReciprocalArm arm =
            new ReciprocalArm(s.design().freshId("recip"), c.tooth(), face, c.origin());
        out.add(
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("nothing opposes the " + Naming.of(c) + " on the " + side + " face")
                .measured("0 reciprocal parts", "1 reciprocal part")
                .remedy("Add a " + side + " reciprocal arm", new DesignEdit.Place(arm))
                .done());
      }
    }
    return out;
  }

  private static String inner(Clasp c) {
    return c.tooth().arch() == Arch.UPPER ? "palatal" : "lingual";
  }
}
