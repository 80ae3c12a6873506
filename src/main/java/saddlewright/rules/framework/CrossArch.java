package saddlewright.rules.framework;

import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.design.ArchDesign;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.layout.ConnectorChoice;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** The connector that would join the two sides of a design. */
public final class CrossArch {
  private CrossArch() {}

  /** The usual span of a connector of this form for what has been designed. */
  public static Span span(Situation s, ConnectorForm form) {
    return ConnectorChoice.span(form, s.chart(), s.design());
  }

  /** Adds the usual connector of the arch, or widens the one that is there. */
  public static DesignEdit connector(Situation s, ArchDesign design) {
    return design
        .majorConnector()
        .<DesignEdit>map(
            m ->
                new DesignEdit.Change(
                    new MajorConnector(
                        m.id(),
                        m.form(),
                        ConnectorChoice.span(m.form(), s.chart(), design),
                        m.shape())))
        .orElseGet(
            () ->
                new DesignEdit.Place(
                    ConnectorChoice.of(
                        design.freshId("connector"), usualForm(s), s.chart(), design)));
  }

  /**
   * A strap in the upper; in the lower a bar, or a plate where the charted lingual depth is too
   * small for one (British teaching notes, read).
   */
  public static ConnectorForm usualForm(Situation s) {
    if (s.arch() == Arch.UPPER) {
      return ConnectorForm.PALATAL_STRAP;
    }
    double depth =
        s.chart().softTissues().lingualDepth().values().stream()
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(Double.MAX_VALUE);
    return depth < s.profile().limit(Quantity.LINGUAL_BAR_DEPTH)
        ? ConnectorForm.LINGUAL_PLATE
        : ConnectorForm.LINGUAL_BAR;
  }
}
