package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A stiff arm in front of a rest beside a free-end saddle works as a crowbar on its tooth. */
public final class FreeEndAbutmentsAreNotLevered implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-abutments-are-not-levered",
          "A cast arm from above is not paired with a rest beside a free-end saddle.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + "; " + Literature.DALHOUSIE));

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
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      EndSupport end = a.ends().get(0);
      boolean nearOnly =
          end.otherRests().isEmpty()
              && end.facingRests().stream().anyMatch(r -> r.site().isOcclusal());
      for (Clasp c : s.design().all(Clasp.class)) {
        boolean stiff = c.material().isCast() && c.form().isOcclusallyApproaching();
        if (nearOnly && stiff && c.tooth() == end.abutment()) {
          Clasp wrought =
              new Clasp(
                  c.id(),
                  c.tooth(),
                  ClaspForm.COMBINATION,
                  c.tip(),
                  c.origin(),
                  ClaspMaterial.WROUGHT_STAINLESS_STEEL);
          out.add(
              finding(c.tooth().toString(), Subject.of(s.arch(), c))
                  .fact("stiff arm and near rest lever the abutment as the base sinks")
                  .measured(
                      "cast arm with a rest beside the saddle", "a rest away or a wrought arm")
                  .remedy("Make the arm wrought", new DesignEdit.Change(wrought))
                  .done());
        }
      }
    }
    return out;
  }
}
