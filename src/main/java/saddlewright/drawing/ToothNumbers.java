package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Notation;
import saddlewright.design.Subject;

/**
 * Writes the number of every tooth outside the sulcus: dark when it is there, grey when it is not.
 */
final class ToothNumbers {
  private static final double SIZE = 2.7;

  private ToothNumbers() {}

  static List<Mark> marks(ArchForm form, Notation notation) {
    List<Mark> out = new ArrayList<>();
    ArchChart chart = form.chart();
    for (PlacedTooth t : form.teeth()) {
      if (t.isClosed()) {
        continue;
      }
      boolean there =
          chart.stands(t.tooth()) || chart.tooth(t.tooth()).status() == ToothStatus.TO_BE_EXTRACTED;
      out.add(
          new Mark.Label(
              Layer.LABELS,
              there ? Ink.LABEL : Ink.FAINT,
              Optional.of(Subject.of(t.tooth())),
              notation.format(t.tooth()),
              form.labelPlace(t.tooth()),
              SIZE,
              Mark.Align.MIDDLE,
              false));
    }
    return out;
  }
}
