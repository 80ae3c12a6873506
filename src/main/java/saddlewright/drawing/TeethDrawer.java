package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;

/** Draws every tooth or empty place of an arch, what was surveyed on it, and its number. */
final class TeethDrawer {
  private TeethDrawer() {}

  static List<Mark> marks(ArchForm form, DrawingOptions options) {
    List<Mark> out = new ArrayList<>();
    ArchChart chart = form.chart();
    for (PlacedTooth t : form.teeth()) {
      ToothStatus status = chart.tooth(t.tooth()).status();
      if (chart.stands(t.tooth()) || status == ToothStatus.TO_BE_EXTRACTED) {
        CrownDrawer crown = new CrownDrawer(t);
        out.addAll(crown.natural());
        if (status == ToothStatus.TO_BE_EXTRACTED) {
          out.add(crown.cross());
        } else if (status == ToothStatus.IMPLANT) {
          out.addAll(new LostPlaceDrawer(t, chart).implant());
        }
        if (options.survey()) {
          out.addAll(new SurveyDrawer(t, chart.tooth(t.tooth())).marks());
        }
      } else {
        out.addAll(new LostPlaceDrawer(t, chart).marks());
      }
    }
    out.addAll(ToothNumbers.marks(form, options.notation()));
    return out;
  }
}
