package saddlewright.layout;

import java.util.List;
import saddlewright.design.Note;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/** Lays out notes: their place is given, so only the leader line follows. */
final class NotePlacement {
  private NotePlacement() {}

  static Laid lay(Note note) {
    Laid laid = Laid.of(note, Substance.NONE, Region.EMPTY);
    if (note.pointsAtX().isEmpty() || note.pointsAtY().isEmpty()) {
      return laid;
    }
    Point target = new Point(note.pointsAtX().get(), note.pointsAtY().get());
    return laid.withDetails(List.of(Path.of(new Point(note.x(), note.y()), target)));
  }
}
