package saddlewright.rules;

import java.util.OptionalDouble;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;

/** The tissue undercut into which the flange of a saddle would reach, as charted. */
public final class FlangeUndercut {
  private FlangeUndercut() {}

  /** The deepest in mm along a saddle; empty where none was charted. */
  public static OptionalDouble deepest(Situation s, Saddle saddle) {
    OptionalDouble deepest = OptionalDouble.empty();
    for (Tooth t : saddle.span().teeth()) {
      Double mm = s.chart().softTissues().tissueUndercut().get(t);
      if (mm != null) {
        deepest = OptionalDouble.of(Math.max(mm, deepest.orElse(0)));
      }
    }
    return deepest;
  }

  /** Whether it is deeper than a flange can enter in this school. */
  public static boolean bars(Situation s, Saddle saddle) {
    return deepest(s, saddle).orElse(0) > s.profile().limit(Quantity.FLANGE_UNDERCUT);
  }
}
