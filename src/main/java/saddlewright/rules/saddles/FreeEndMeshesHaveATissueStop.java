package saddlewright.rules.saddles;

import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Subject;
import saddlewright.design.TissueStop;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleMetalwork;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Without a foot on the ridge the mesh bends down while the acrylic is packed on to it. */
public final class FreeEndMeshesHaveATissueStop implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-meshes-have-a-tissue-stop",
          "The mesh of a lower free-end saddle stands on the ridge by a tissue stop.",
          Severity.SHOULD,
          Source.read(Literature.WESTERN_AUSTRALIA + "; " + Literature.DENTAL_STUDY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER) {
      return;
    }
    for (AreaSupport a : AreaSupport.all(s)) {
      SaddleMetalwork metal = SaddleMetalwork.of(s, a.saddle());
      if (!a.isFreeEnd() || metal.meshes().isEmpty()) {
        continue;
      }
      if (metal.stops().isEmpty()) {
        RetentionMesh mesh = metal.meshes().get(0);
        Tooth far = far(a, mesh);
        on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
            .fact("its mesh hangs free over the ridge")
            .measured("no tissue stop", "1 tissue stop")
            .remedy(
                "Add a tissue stop at " + far,
                new DesignEdit.Place(new TissueStop(ComponentId.of("stop-1"), far)))
            .done();
      } else {
        for (TissueStop stop : metal.stops()) {
          on.upheld(
              "holds the mesh off the ridge while acrylic is packed", Subject.of(s.arch(), stop));
        }
      }
    }
  }

  /** The place of the mesh farthest from the abutment, within its saddle. */
  private static Tooth far(AreaSupport a, RetentionMesh mesh) {
    boolean abutmentFirst = a.ends().get(0).abutment().place() < a.saddle().span().first().place();
    Tooth end = abutmentFirst ? mesh.span().last() : mesh.span().first();
    Tooth bound = abutmentFirst ? a.saddle().span().last() : a.saddle().span().first();
    return a.saddle().span().contains(end) ? end : bound;
  }
}
