package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.chart.SoftTissues;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Thin mucosa over a torus ulcerates under metal. */
public final class PalatalToriAreSpared implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "palatal-tori-are-spared",
          "A connector goes round a palatal torus or is relieved over it.",
          Severity.MUST,
          Source.read("teaching notes on maxillary major connectors"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Two layers of casting wax of about 0.3 mm; the figure is the project's own choice. */
  private static final double USUAL_RELIEF_MM = 0.5;

  /** Whether a palatal torus is charted. */
  static boolean isCharted(Situation s) {
    return s.chart().softTissues().tori().contains(SoftTissues.Torus.PALATAL);
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (!isCharted(s)) {
      return;
    }
    Optional<Relief> relief =
        s.design().stream(Relief.class)
            .filter(r -> r.area() == Relief.Area.PALATAL_TORUS && r.thickness() > 0)
            .findFirst();
    for (LaidConnector c : LaidConnector.all(s)) {
      if (!crosses(c)) {
        on.upheld("goes round the torus", c.subject());
      } else if (relief.isPresent()) {
        on.upheld("spares the torus", Subject.of(s.arch(), relief.get()));
      } else {
        on.finding(c.name(), c.subject())
            .fact("crosses the palatal torus without relief")
            .measured("0 mm relief", "relief, or a ring or horseshoe round it")
            .remedy(c.label(ConnectorForm.PALATAL_RING), c.as(ConnectorForm.PALATAL_RING))
            .remedy(
                "Relieve it over the torus",
                new DesignEdit.Place(
                    new Relief(
                        s.design().freshId("relief"), Relief.Area.PALATAL_TORUS, USUAL_RELIEF_MM)))
            .done();
      }
    }
  }

  private static boolean crosses(LaidConnector c) {
    return c.is(
        ConnectorForm.PALATAL_STRAP, ConnectorForm.PALATAL_PLATE, ConnectorForm.PALATAL_BAR);
  }
}
