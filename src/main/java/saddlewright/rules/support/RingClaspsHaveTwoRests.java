package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The long arm of a ring clasp needs a stop at its beginning and another at its far side. */
public final class RingClaspsHaveTwoRests implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "ring-clasps-have-two-rests",
          "A tooth with a ring clasp has two rests, near and far.",
          Severity.MUST,
          Source.read(Literature.STRATTON + "; " + Literature.OKLAHOMA + " (question only)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : s.design().all(Clasp.class)) {
      if (c.form() != ClaspForm.RING || c.tooth().isAnterior()) {
        continue;
      }
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == c.tooth()).toList();
      boolean both =
          rests.size() >= 2 || rests.stream().anyMatch(r -> r.form() == Rest.Form.DOUBLE);
      if (both) {
        for (Rest r : rests) {
          on.upheld("steadies the long arm of the ring clasp", Subject.of(s.arch(), r));
        }
      } else {
        find(s, c, rests, on);
      }
    }
  }

  private static void find(Situation s, Clasp c, List<Rest> rests, Judging on) {
    List<DesignEdit> edits = new ArrayList<>();
    for (End end : End.values()) {
      RestSite site = RestSite.occlusal(end);
      if (rests.stream().noneMatch(r -> r.site() == site)) {
        edits.add(NewRest.edit(s, c.tooth(), site));
      }
    }
    on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
        .fact("ring clasp without a rest at each end of the tooth")
        .measured(Amount.of(rests.size(), "rest"), "2 rests")
        .remedy("Add the missing rest", new DesignEdit.Several(edits))
        .done();
  }
}
