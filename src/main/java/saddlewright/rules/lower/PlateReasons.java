package saddlewright.rules.lower;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import saddlewright.chart.SoftTissues.RidgeState;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;
import saddlewright.rules.WeakTeeth;

/**
 * What in the chart calls for a lingual plate (British and North American teaching notes, read).
 */
public final class PlateReasons {
  private PlateReasons() {}

  /** The reasons in words; empty when a bar would do, or when nothing is charted. */
  public static List<String> of(LaidConnector c) {
    Situation s = c.situation();
    List<String> out = new ArrayList<>();
    SulcusDepth depth = SulcusDepth.lingual(c);
    if (depth.isLessThan(s.profile().limit(Quantity.LINGUAL_BAR_DEPTH))) {
      out.add("a lingual sulcus of " + Amount.mm(depth.least()));
    }
    if (s.chart().softTissues().highLingualFrenum()) {
      out.add("a high lingual frenum");
    }
    if (BarObstacles.hasTorus(s)) {
      out.add("a torus");
    }
    c.standing().stream()
        .filter(Tooth::isAnterior)
        .filter(t -> WeakTeeth.isWeak(s, t) || s.chart().tooth(t).doubtful())
        .findFirst()
        .ifPresent(t -> out.add("the weak " + t));
    if (isResorbed(s)) {
      out.add("resorbed ridges on both sides");
    }
    if (s.opposing().standing().isEmpty()) {
      out.add("an opposing complete denture");
    }
    return out;
  }

  private static boolean isResorbed(Situation s) {
    Map<Side, RidgeState> ridges = s.chart().softTissues().ridges();
    return AreaPattern.of(s).freeEnds().size() == 2
        && ridges.size() == 2
        && ridges.values().stream().allMatch(r -> r == RidgeState.RESORBED);
  }
}
