package saddlewright.rules.lower;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.PostDam;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A bead under a lower connector would dig into thin mucosa. */
public final class LowerConnectorsAreNotBeaded implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-connectors-are-not-beaded",
          "A lower connector bears no beading or dam.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER) {
      return;
    }
    List<PostDam> dams = s.design().all(PostDam.class);
    for (PostDam d : dams) {
      on.finding(Naming.of(d), Subject.of(s.arch(), d))
          .fact("would cut into the thin mucosa under a lower connector")
          .measured("beaded", "not beaded")
          .remedy("Take it away", new DesignEdit.Remove(d.id()))
          .done();
    }
    if (dams.isEmpty() && s.design().majorConnector().isPresent()) {
      on.judged();
    }
  }
}
