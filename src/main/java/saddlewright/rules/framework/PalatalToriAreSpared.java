package saddlewright.rules.framework;

import java.util.List;
import saddlewright.chart.SoftTissues;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
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

  /** Two layers of casting wax of about 0.3 mm; the figure is the project's own choice. */
  private static final double USUAL_RELIEF_MM = 0.5;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    boolean torus = s.chart().softTissues().tori().contains(SoftTissues.Torus.PALATAL);
    boolean relieved =
        s.design().stream(Relief.class)
            .anyMatch(r -> r.area() == Relief.Area.PALATAL_TORUS && r.thickness() > 0);
    if (!torus || relieved) {
      return List.of();
    }
    return s.design().stream(MajorConnector.class)
        .filter(m -> crosses(m.form()))
        .map(
            m ->
                finding(Naming.of(m), Subject.of(s.arch(), m))
                    .fact("crosses the palatal torus without relief")
                    .measured("0 mm relief", "relief, or a ring or horseshoe round it")
                    .remedy(
                        "Make it a palatal ring",
                        new DesignEdit.Change(
                            MajorConnector.of(m.id(), ConnectorForm.PALATAL_RING, m.span())))
                    .remedy(
                        "Relieve it over the torus",
                        new DesignEdit.Place(
                            new Relief(
                                s.design().freshId("relief"),
                                Relief.Area.PALATAL_TORUS,
                                USUAL_RELIEF_MM)))
                    .done())
        .toList();
  }

  private static boolean crosses(ConnectorForm form) {
    return form == ConnectorForm.PALATAL_STRAP
        || form == ConnectorForm.PALATAL_PLATE
        || form == ConnectorForm.PALATAL_BAR;
  }
}
