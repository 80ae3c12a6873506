package saddlewright.rules.framework;

import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** The connector that would join the two sides of a design. */
final class CrossArch {
  private CrossArch() {}

  /** From the outermost part on one side to the outermost on the other. */
  static Span span(Situation s) {
    return span(s.design());
  }

  /** Adds the usual connector of the arch, or widens the one that is there. */
  static DesignEdit connector(Situation s, ArchDesign design) {
    Span wide = span(design);
    return design
        .majorConnector()
        .<DesignEdit>map(
            m -> new DesignEdit.Change(new MajorConnector(m.id(), m.form(), wide, m.shape())))
        .orElseGet(
            () ->
                new DesignEdit.Place(
                    MajorConnector.of(design.freshId("connector"), usualForm(s), wide)));
  }

  /**
   * A strap in the upper; in the lower a bar, or a plate where the charted lingual depth is too
   * small for one (British teaching notes, read).
   */
  static ConnectorForm usualForm(Situation s) {
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

  private static Span span(ArchDesign design) {
    int right = 6;
    int left = 9;
    for (Component c : design.components()) {
      if (c instanceof Rest || c instanceof Clasp || c instanceof GuidePlate) {
        for (Tooth t : c.teeth()) {
          right = Math.min(right, t.place());
          left = Math.max(left, t.place());
        }
      } else if (c instanceof Saddle x) {
        // The connector runs into the near end of a saddle.
        if (x.span().last().place() < 8) {
          right = Math.min(right, x.span().last().place());
        }
        if (x.span().first().place() > 7) {
          left = Math.max(left, x.span().first().place());
        }
      }
    }
    return Span.of(Tooth.at(design.arch(), right), Tooth.at(design.arch(), left));
  }
}
