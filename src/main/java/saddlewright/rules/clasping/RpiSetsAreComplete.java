package saddlewright.rules.clasping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;

/** Rest, plate and bar work together: without one of them the other two do harm. */
public final class RpiSetsAreComplete implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rpi-sets-are-complete",
          "An I-bar beside a free-end saddle goes with a rest away from the saddle and a guide"
              + " plate beside it, and with no lingual arm.",
          Severity.MUST,
          Source.read(
              Literature.KROL
                  + "; "
                  + Literature.MCCRACKEN_NOTES
                  + "; "
                  + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (TerminalAbutment a : TerminalAbutment.all(s)) {
      for (Clasp c : StandingClasps.on(s, a.tooth())) {
        if (c.form() == ClaspForm.I_BAR) {
          judge(s, on, a, c);
        }
      }
    }
  }

  private static void judge(Situation s, Judging on, TerminalAbutment a, Clasp c) {
    Tooth t = a.tooth();
    List<String> wanting = new ArrayList<>();
    List<DesignEdit> edits = new ArrayList<>();
    if (!a.isRestedAway()) {
      RestSite site = a.end().farSite();
      wanting.add((t.isAnterior() ? "cingulum" : ToothNames.end(a.facing().opposite())) + " rest");
      edits.add(NewRest.edit(s, t, site));
    }
    if (!a.hasGuidePlate(s)) {
      wanting.add(ToothNames.end(a.facing()) + " guide plate");
      edits.add(new DesignEdit.Place(new GuidePlate(s.design().freshId("plate"), t, a.facing())));
    }
    Optional<ReciprocalArm> arm =
        s.design().stream(ReciprocalArm.class)
            .filter(r -> r.tooth() == t && r.face() == Face.LINGUAL)
            .findFirst();
    boolean bare = s.design().stream(Rest.class).noneMatch(r -> r.tooth() == t);
    if (bare && a.hasGuidePlate(s)) {
      on.judged(); // A clasped tooth without any rest is a finding of its own.
    } else if (!wanting.isEmpty()) {
      arm.ifPresent(r -> edits.add(new DesignEdit.Remove(r.id())));
      on.finding(t.toString(), Subject.of(s.arch(), c))
          .fact("the set of the " + Naming.of(c) + " is not complete")
          .measured("no " + String.join(", no ", wanting), "rest away, plate and I-bar")
          .remedy("Complete the set", new DesignEdit.Several(edits))
          .done();
    } else if (arm.isPresent()) {
      on.finding(t.toString(), Subject.of(s.arch(), c))
          .fact("a lingual arm keeps the set of the " + Naming.of(c) + " from letting go")
          .measured("lingual arm", "rest, plate and I-bar alone")
          .weighing(Severity.SHOULD)
          .remedy("Take the lingual arm away", new DesignEdit.Remove(arm.get().id()))
          .done();
    } else {
      on.upheld(
          "works with its rest and plate as one set, which lets go as the saddle sinks",
          Subject.of(s.arch(), c));
    }
  }
}
