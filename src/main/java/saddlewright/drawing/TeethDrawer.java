package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.Subject;
import saddlewright.layout.Layout;

/** Draws crowns, lost teeth, charted undercuts and tooth numbers. */
final class TeethDrawer {
  private TeethDrawer() {}

  static List<Mark> marks(Layout layout, DrawingOptions options) {
    List<Mark> out = new ArrayList<>();
    for (PlacedTooth t : layout.form().teeth()) {
      Optional<Subject> subject = Optional.of(Subject.of(t.tooth()));
      out.add(new Mark.Fill(Layer.TEETH, Ink.ENAMEL, subject, List.of(t.outline()), 1));
      out.add(
          new Mark.Stroke(
              Layer.TEETH,
              Ink.TOOTH_LINE,
              subject,
              List.of(t.outline().toPath()),
              true,
              0.25,
              List.of()));
    }
    return out;
  }
}
