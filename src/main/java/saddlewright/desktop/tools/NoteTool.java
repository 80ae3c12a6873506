package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.Note;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;

/** Places a note: beside a tooth with a leader line to where one points, elsewhere on the spot. */
record NoteTool() implements Tool {
  /** The words stand this far outside the crown that the leader points at, mm. */
  private static final double OUT = 15;

  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Point at = aim.point();
    Optional<Point> target = Optional.empty();
    if (aim.near().isPresent()) {
      target = Optional.of(at);
      at = at.plus(aim.near().get().buccal().times(OUT));
    }
    Note note =
        new Note(
            ComponentId.of("note-1"),
            Words.of("note.new"),
            clamped(at.x()),
            clamped(at.y()),
            target.map(Point::x),
            target.map(Point::y));
    return List.of(
        new Proposal(
            Words.of("edit.note"),
            aim.arch(),
            now.subject().with(aim.arch(), new DesignEdit.Place(note))));
  }

  private static double clamped(double v) {
    return Math.max(-190, Math.min(190, v));
  }
}
