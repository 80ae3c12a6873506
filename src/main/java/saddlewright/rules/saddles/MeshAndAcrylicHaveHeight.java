package saddlewright.rules.saddles;

import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleBase;
import saddlewright.rules.SaddleHeight;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/**
 * Mesh, acrylic and tooth lie one above the other; where they do not fit, the tooth is ground
 * through.
 */
public final class MeshAndAcrylicHaveHeight implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "mesh-and-acrylic-have-height",
          "A back saddle on open metalwork has the height for mesh, acrylic and tooth.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + " (question only)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      if (saddle.base() == Saddle.Base.ACRYLIC_ON_MESH) {
        List<Tooth> back = SaddleTeeth.of(s, saddle).stream().filter(t -> !t.isAnterior()).toList();
        if (!back.isEmpty()) {
          weigh(s, saddle, SaddleHeight.of(s, back), on);
        }
      }
    }
  }

  private static void weigh(Situation s, Saddle saddle, SaddleHeight height, Judging on) {
    Subject subject = Subject.of(s.arch(), saddle);
    if (height.isLow()) {
      on.finding(Naming.of(saddle), subject)
          .fact("too low for mesh, acrylic and tooth at " + ToothList.of(height.low()))
          .measured(
              Amount.mm(height.least().orElseThrow()),
              Amount.atLeastMm(s.profile().limit(Quantity.SADDLE_SPACE)))
          .remedy("Make its base metal", SaddleBase.metal(s, saddle))
          .done();
    } else if (!height.uncharted().isEmpty()) {
      on.unanswered(ChartField.saddleSpace(height.uncharted()), subject);
    } else {
      on.upheld(
          "has " + Amount.mm(height.least().orElseThrow()) + " for mesh, acrylic and tooth",
          subject);
    }
  }
}
