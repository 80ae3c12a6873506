package saddlewright.design;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;

/**
 * Free words on the sheet, with a leader line when they point at something.
 *
 * @param text what it says
 * @param x place of the words in the frame of the arch, millimetres to the viewer's right
 * @param y the same, millimetres from the incisal midpoint towards the molars
 * @param pointsAtX where the leader line ends, if there is one
 * @param pointsAtY the same
 */
public record Note(
    ComponentId id,
    String text,
    double x,
    double y,
    Optional<Double> pointsAtX,
    Optional<Double> pointsAtY)
    implements Component {

  public Note {
    if (!(Math.abs(x) <= 200 && Math.abs(y) <= 200)) {
      throw new IllegalArgumentException("a note lies within 200 mm of the arch");
    }
    if (pointsAtX.isPresent() != pointsAtY.isPresent()) {
      throw new IllegalArgumentException("a leader line needs both coordinates or none");
    }
    pointsAtX.ifPresent(Note::refuseFar);
    pointsAtY.ifPresent(Note::refuseFar);
  }

  private static void refuseFar(double v) {
    if (!(Math.abs(v) <= 200)) {
      throw new IllegalArgumentException("a leader line ends within 200 mm of the arch");
    }
  }

  @Override
  public Note withId(ComponentId other) {
    return new Note(other, text, x, y, pointsAtX, pointsAtY);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.note(this);
  }

  @Override
  public Note mirrored(ComponentId other) {
    return new Note(other, text, -x, y, pointsAtX.map(v -> -v), pointsAtY);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of();
  }
}
