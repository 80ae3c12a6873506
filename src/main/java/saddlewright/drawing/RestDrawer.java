package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;

/** Draws rests on top of the casting: tinted, with a line of their own and the hollow of the seat. */
final class RestDrawer {
  private RestDrawer() {}

  static List<Mark> marks(Rest rest, Laid laid, PlacedTooth tooth, Optional<Subject> subject) {
    List<Mark> out = new ArrayList<>();
    List<Outline> rings = laid.body().boundaries();
    Ink ink = rest.indirectRetainer() ? Ink.INDIRECT : Ink.REST;
    out.add(new Mark.Fill(Layer.COMPONENTS, ink, subject, rings, 0.32));
    out.add(
        new Mark.Stroke(
            Layer.COMPONENTS,
            ink,
            subject,
            rings.stream().map(Outline::toPath).toList(),
            true,
            0.3,
            rest.indirectRetainer() ? List.of(0.9, 0.45) : List.of()));
    if (!laid.details().isEmpty()) {
      out.add(
          new Mark.Stroke(
              Layer.COMPONENTS, ink, subject, laid.details(), false, 0.18, List.of()));
    }
    if (rest.indirectRetainer()) {
      Point at = tooth.rimOut(90, 1.9);
      out.add(
          new Mark.Label(
              Layer.LABELS, ink, subject, "IR", at, 2.1, Mark.Align.MIDDLE, true));
    }
    return out;
  }
}
