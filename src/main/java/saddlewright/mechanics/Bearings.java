package saddlewright.mechanics;

import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * The points at which a denture meets teeth: retentive tips and rest seats, in the arch's frame.
 */
public final class Bearings {
  private Bearings() {}

  /** The retentive tip; where it is not laid out, the crown's rim in the middle of its zone. */
  public static Point tip(Layout layout, Clasp clasp) {
    return layout
        .find(clasp.id())
        .flatMap(Laid::tip)
        .orElseGet(() -> layout.form().tooth(clasp.tooth()).rim(PlacedTooth.degrees(clasp.tip())));
  }

  /** The middle of the seat of a rest. */
  public static Point seat(Layout layout, Rest rest) {
    return layout.form().tooth(rest.tooth()).seat(rest.site());
  }

  /** The centre of the artificial tooth at a place. */
  public static Point artificialTooth(Layout layout, Tooth tooth) {
    return layout.form().tooth(tooth).centre();
  }
}
