package saddlewright.drawing;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;

/** Draws guide plates and planes, and the words of notes. */
final class GuideDrawer {
  private GuideDrawer() {}

  static List<Mark> plate(Laid laid, Optional<Subject> subject) {
    List<Outline> rings = laid.body().boundaries();
    return List.of(
        new Mark.Fill(Layer.COMPONENTS, Ink.GUIDE, subject, rings, 0.55),
        new Mark.Stroke(
            Layer.COMPONENTS,
            Ink.GUIDE,
            subject,
            rings.stream().map(Outline::toPath).toList(),
            true,
            0.25,
            List.of()));
  }

  static List<Mark> plane(Laid laid, Optional<Subject> subject) {
    return List.of(
        new Mark.Stroke(
            Layer.COMPONENTS, Ink.GUIDE, subject, laid.details(), false, 0.22, List.of()));
  }

  static List<Mark> note(Note note, Laid laid, Optional<Subject> subject) {
    Mark words =
        new Mark.Label(
            Layer.NOTES,
            Ink.NOTE,
            subject,
            note.text(),
            new Point(note.x(), note.y()),
            2.3,
            Mark.Align.MIDDLE,
            false);
    if (laid.details().isEmpty()) {
      return List.of(words);
    }
    return List.of(
        words,
        new Mark.Stroke(
            Layer.NOTES, Ink.NOTE, subject, laid.details(), false, 0.15, List.of()),
        new Mark.Dots(
            Layer.NOTES, Ink.NOTE, subject, List.of(laid.details().get(0).end()), 0.4));
  }
}
