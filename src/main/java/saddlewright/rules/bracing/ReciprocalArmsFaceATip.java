package saddlewright.rules.bracing;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A reciprocal arm answers a retentive tip; without one it only covers the tooth. */
public final class ReciprocalArmsFaceATip implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "reciprocal-arms-face-a-tip",
          "A reciprocal arm lies on the face opposite the retentive tip of its tooth.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.NEURONS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (ReciprocalArm a : s.design().all(ReciprocalArm.class)) {
      List<Clasp> clasps =
          s.design().stream(Clasp.class).filter(c -> c.tooth() == a.tooth()).toList();
      Subject arm = Subject.of(s.arch(), a);
      Optional<Clasp> faced =
          clasps.stream().filter(c -> c.tip().face() == a.face().opposite()).findFirst();
      if (faced.isPresent()) {
        on.upheld("lies straight across from the tip of the " + Naming.of(faced.get()), arm);
      } else if (clasps.isEmpty()) {
        on.finding(a.tooth().toString(), arm)
            .fact("reciprocal arm on a tooth without a clasp; it only covers the tooth")
            .measured("0 tips opposite", "1 tip opposite")
            .weighing(Severity.CONSIDER)
            .remedy("Take the reciprocal arm away", new DesignEdit.Remove(a.id()))
            .done();
      } else {
        ReciprocalArm turned =
            new ReciprocalArm(a.id(), a.tooth(), a.face().opposite(), a.origin());
        on.finding(a.tooth().toString(), arm)
            .fact("reciprocal arm on the same face as the tip of the " + Naming.of(clasps.get(0)))
            .measured("0 tips opposite", "1 tip opposite")
            .remedy("Move the reciprocal arm to the other face", new DesignEdit.Change(turned))
            .done();
      }
    }
  }
}
