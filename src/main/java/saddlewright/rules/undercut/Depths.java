package saddlewright.rules.undercut;

import java.util.Optional;
import saddlewright.design.ClaspMaterial;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** The depths of undercut in which a school lets each material work. */
final class Depths {
  private Depths() {}

  static Optional<Double> asked(Situation s, ClaspMaterial material) {
    return switch (material) {
      case CAST_COBALT_CHROMIUM -> Optional.of(s.profile().limit(Quantity.UNDERCUT_CAST));
      case WROUGHT_GOLD -> Optional.of(s.profile().limit(Quantity.UNDERCUT_WROUGHT_GOLD));
      case WROUGHT_STAINLESS_STEEL ->
          Optional.of(s.profile().limit(Quantity.UNDERCUT_WROUGHT_STEEL));
      // No school's figure was found for these.
      case CAST_TITANIUM, CAST_GOLD, WROUGHT_COBALT_CHROMIUM, POLYMER -> Optional.empty();
    };
  }

  static boolean suits(Situation s, double depth, double asked) {
    return Math.abs(depth - asked) <= s.profile().limit(Quantity.UNDERCUT_LATITUDE) + 1e-9;
  }
}
