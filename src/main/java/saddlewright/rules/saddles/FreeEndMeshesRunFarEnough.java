package saddlewright.rules.saddles;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleMetalwork;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Acrylic that hangs behind the end of its mesh breaks off there. */
public final class FreeEndMeshesRunFarEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-meshes-run-far-enough",
          "The mesh of a free-end saddle covers two thirds of a lower ridge, or an upper one to the tuberosity.",
          Severity.SHOULD,
          Source.read(Literature.DENTAL_STUDY_NOTES + "; " + Literature.WESTERN_AUSTRALIA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Mesh stays this far off the abutment and the end of the base together (derived), mm. */
  private static final double OFF_BOTH_ENDS = 2.5;

  /** An upper mesh ends this far in front of the hamular notch (derived), mm. */
  private static final double OFF_NOTCH = 4;

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd()) {
        weigh(s, a.saddle(), on);
      }
    }
  }

  private static void weigh(Situation s, Saddle saddle, Judging on) {
    List<RetentionMesh> meshes = SaddleMetalwork.of(s, saddle).meshes();
    double ridge = length(s, saddle.id());
    if (meshes.isEmpty() || ridge == 0) {
      return;
    }
    double run = 0;
    for (RetentionMesh m : meshes) {
      run += length(s, m.id());
    }
    double asked =
        s.arch() == Arch.LOWER
            ? s.profile().limit(Quantity.MESH_SHARE) * (ridge - OFF_BOTH_ENDS)
            : ridge - OFF_BOTH_ENDS - OFF_NOTCH;
    // A mesh through the whole saddle is laid out to end where it should.
    boolean whole =
        meshes.stream()
            .anyMatch(
                m ->
                    m.span().contains(saddle.span().first())
                        && m.span().contains(saddle.span().last()));
    if (whole || run + Clearance.MEASURING_ERROR_MM >= asked) {
      on.upheld(
          "runs over " + Amount.mm(run) + " of the " + Amount.mm(ridge) + " under its saddle",
          Subject.of(s.arch(), meshes.get(0)));
      return;
    }
    RetentionMesh first = meshes.get(0);
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(new RetentionMesh(first.id(), saddle.span(), first.form())));
    meshes.stream().skip(1).forEach(m -> edits.add(new DesignEdit.Remove(m.id())));
    on.finding(Naming.of(first), Subject.of(s.arch(), first), Subject.of(s.arch(), saddle))
        .fact("ends too early under the free-end " + Naming.of(saddle))
        .measured(Amount.mm(run), Amount.atLeastMm(asked))
        .remedy("Run it through the whole saddle", new DesignEdit.Several(edits))
        .done();
  }

  private static double length(Situation s, ComponentId id) {
    return s.layout().find(id).map(l -> l.measure(Measure.LENGTH).orElse(0)).orElse(0.0);
  }
}
