package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.layout.Laid;

/** The clear area by which a component can be picked on the sheet. */
final class Grip {
  /** Width of the area along a component that is only lines, mm. */
  private static final double LINE_WIDTH = 1.8;

  private Grip() {}

  /**
   * The area, with the ink of what it lies over so that the key of the sheet gains nothing by it;
   * empty for a component that covers nothing and has no lines.
   */
  static List<Mark> of(Laid laid, Subject subject, Ink ink) {
    List<Outline> rings = new ArrayList<>(laid.body().boundaries());
    if (rings.isEmpty()) {
      laid.details().stream()
          .filter(p -> p.length() > 1)
          .map(Grip::along)
          .limit(1)
          .forEach(rings::add);
    }
    return rings.isEmpty()
        ? List.of()
        : List.of(new Mark.Fill(Layer.COMPONENTS, ink, Optional.of(subject), rings, 0));
  }

  private static Outline along(Path line) {
    boolean loop = line.start().distanceTo(line.end()) < 0.5;
    Path open = loop ? line.between(0, 0.45 * line.length()) : line;
    Path coarse = Path.through(open.sampled(1.5));
    return Outline.of(
        coarse.offset(LINE_WIDTH / 2).then(coarse.offset(-LINE_WIDTH / 2).reversed()).points());
  }
}
