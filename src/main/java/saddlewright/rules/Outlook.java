package saddlewright.rules;

import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;

/** What can be expected of a tooth as an abutment, as charted. */
public final class Outlook {
  private Outlook() {}

  /** Whether it is of doubtful prognosis, or as loose as the school lets an abutment be. */
  public static boolean isPoor(Situation s, Tooth tooth) {
    ToothFindings f = s.chart().tooth(tooth);
    return f.doubtful()
        || f.mobility().isPresent() && f.mobility().get() >= s.profile().limit(Quantity.MOBILITY);
  }
}
