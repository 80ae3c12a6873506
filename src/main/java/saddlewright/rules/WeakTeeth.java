package saddlewright.rules;

import java.util.List;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;

/**
 * Teeth that are too loose, or have lost too much bone, to be asked for more than their own load.
 */
public final class WeakTeeth {
  /** Bone that is left, in per cent, below which a tooth counts as weak: half (common practice). */
  private static final double HALF = 50;

  private WeakTeeth() {}

  /** Whether the chart says that a standing tooth is weak. */
  public static boolean isWeak(Situation s, Tooth tooth) {
    ToothFindings f = s.chart().tooth(tooth);
    double loose = s.profile().limit(Quantity.LOOSE_TOOTH);
    return f.mobility().filter(g -> g >= loose).isPresent()
        || f.boneSupportPercent().filter(b -> b < HALF).isPresent();
  }

  /** Those of the teeth of which neither mobility nor bone support is charted. */
  public static List<Tooth> unknown(Situation s, List<Tooth> teeth) {
    return teeth.stream()
        .filter(
            t ->
                s.chart().tooth(t).mobility().isEmpty()
                    && s.chart().tooth(t).boneSupportPercent().isEmpty())
        .toList();
  }
}
