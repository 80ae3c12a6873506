package saddlewright.prescription;

import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.rules.Quantity;

/** The depth of undercut that a school wants under the tip of a clasp, by its material. */
final class WantedUndercut {
  private WantedUndercut() {}

  /** Empty for materials without a figure of any school. */
  static Optional<Quantity> of(Clasp clasp) {
    return switch (clasp.material()) {
      case CAST_COBALT_CHROMIUM -> Optional.of(Quantity.UNDERCUT_CAST);
      case WROUGHT_GOLD -> Optional.of(Quantity.UNDERCUT_WROUGHT_GOLD);
      case WROUGHT_STAINLESS_STEEL -> Optional.of(Quantity.UNDERCUT_WROUGHT_STEEL);
      case CAST_TITANIUM, CAST_GOLD, WROUGHT_COBALT_CHROMIUM, POLYMER -> Optional.empty();
    };
  }
}
