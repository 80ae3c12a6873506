package saddlewright.rules.saddles;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleBase;
import saddlewright.rules.SaddleMetalwork;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Acrylic does not stick to polished metal; it has to flow through something. */
public final class AcrylicSaddlesHaveMesh implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "acrylic-saddles-have-mesh",
          "Acrylic is held to the framework by mesh, posts or backings.",
          Severity.SHOULD,
          Source.commonPractice(
              "acrylic does not bond to polished metal; open metalwork holds it"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().majorConnector().isEmpty()) {
      return;
    }
    for (Saddle saddle : s.design().all(Saddle.class)) {
      if (saddle.base() != Saddle.Base.ACRYLIC_ON_MESH) {
        continue;
      }
      SaddleMetalwork metal = SaddleMetalwork.of(s, saddle);
      List<Tooth> teeth = SaddleTeeth.of(s, saddle);
      if (!metal.meshes().isEmpty()) {
        for (RetentionMesh m : metal.meshes()) {
          on.upheld("holds the acrylic of " + Naming.of(saddle), Subject.of(s.arch(), m));
        }
      } else if (!teeth.isEmpty() && teeth.stream().allMatch(metal::backs)) {
        on.judged();
      } else {
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
            .fact("nothing holds its acrylic to the framework")
            .measured("no open metalwork", "a lattice, mesh or posts")
            .remedy("Lay a lattice with its finish line", SaddleBase.acrylic(s, saddle))
            .done();
      }
    }
  }
}
