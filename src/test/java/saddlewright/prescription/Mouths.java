package saddlewright.prescription;

import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** Small charts for tests of the prescription. */
public final class Mouths {
  private Mouths() {}

  public static ToothFindings standing() {
    return ToothFindings.STANDING;
  }

  /** A lower arch without these teeth, which are replaced, and without 38 and 48, which are not. */
  public static Case lowerMissing(int... fdi) {
    ArchChart chart = ArchChart.full(Arch.LOWER);
    for (int n : new int[] {38, 48}) {
      chart =
          chart.with(Tooth.of(n), ToothFindings.of(ToothStatus.MISSING, GapDecision.NOT_REPLACED));
    }
    for (int n : fdi) {
      chart = chart.with(Tooth.of(n), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    return Case.blank("T-1").with(chart);
  }
}
