package saddlewright.rules.saddles;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.Backing;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleHeight;
import saddlewright.rules.SaddleMetalwork;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/** In a deep bite the lower incisors bite on metal or they bite through acrylic. */
public final class LowFrontSaddlesTakeBackings implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "low-front-saddles-take-backings",
          "A front saddle too low for mesh carries its teeth on metal backings or posts.",
          Severity.SHOULD,
          Source.read(Literature.WESTERN_AUSTRALIA + "; " + Literature.DALHOUSIE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      if (saddle.base() != Saddle.Base.ACRYLIC_ON_MESH) {
        continue;
      }
      List<Tooth> front = SaddleTeeth.of(s, saddle).stream().filter(Tooth::isAnterior).toList();
      if (!front.isEmpty()) {
        weigh(s, saddle, SaddleHeight.of(s, front), on);
      }
    }
  }

  private static void weigh(Situation s, Saddle saddle, SaddleHeight height, Judging on) {
    SaddleMetalwork metal = SaddleMetalwork.of(s, saddle);
    List<Tooth> bare = height.low().stream().filter(t -> !metal.backs(t)).toList();
    boolean posts = metal.meshes().stream().anyMatch(m -> m.form() == RetentionMesh.Form.POSTS);
    if (!bare.isEmpty() && !posts) {
      Draft d =
          on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
              .fact("too low for mesh at " + ToothList.of(bare) + ", and no metal backs the teeth")
              .measured(
                  Amount.mm(height.least().orElseThrow()),
                  Amount.atLeastMm(s.profile().limit(Quantity.SADDLE_SPACE)) + ", or backings")
              .remedy("Back " + ToothList.of(bare) + " with metal", backings(bare));
      metal.meshes().stream()
          .findFirst()
          .ifPresent(
              m ->
                  d.remedy(
                      "Carry its teeth on posts",
                      new DesignEdit.Change(
                          new RetentionMesh(m.id(), m.span(), RetentionMesh.Form.POSTS))));
      d.done();
    } else if (!height.uncharted().isEmpty()
        && !height.uncharted().stream().allMatch(metal::backs)
        && !posts) {
      on.unanswered(ChartField.saddleSpace(height.uncharted()), Subject.of(s.arch(), saddle));
    } else {
      on.judged();
      for (Backing b : metal.backings()) {
        if (height.low().contains(b.tooth())) {
          on.upheld("carries a tooth for which mesh has no room", Subject.of(s.arch(), b));
        }
      }
    }
  }

  private static DesignEdit backings(List<Tooth> teeth) {
    List<DesignEdit> edits = new ArrayList<>();
    for (Tooth t : teeth) {
      edits.add(new DesignEdit.Place(new Backing(ComponentId.of("backing-1"), t)));
    }
    return new DesignEdit.Several(edits);
  }
}
