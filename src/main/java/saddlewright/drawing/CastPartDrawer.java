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

/**
 * Draws what tells rests, reciprocal arms and guide plates from the rest of the casting, which is
 * drawn with its hatch and outline elsewhere.
 */
final class CastPartDrawer {
  private static final double LINE_WIDTH = 0.25;
  private static final double TINT = 0.4;
  private static final double PLANE_WIDTH = 0.16;
  private static final List<Double> INDIRECT_DASH = List.of(0.7, 0.45);
  private static final double LETTERS = 2.3;

  private final Laid laid;
  private final Optional<Subject> subject;

  CastPartDrawer(Laid laid, Optional<Subject> subject) {
    this.laid = laid;
    this.subject = subject;
  }

  /** A rest; one that is an indirect retainer has a broken outline and its letters. */
  List<Mark> rest(Rest rest, PlacedTooth tooth) {
    if (!rest.indirectRetainer()) {
      return toned(Ink.REST, 0.55);
    }
    List<Mark> out = new ArrayList<>();
    out.add(fill(Ink.REST, 0.3));
    out.add(
        new Mark.Stroke(
            Layer.COMPONENTS, Ink.INDIRECT, subject, edges(), false, 0.42, INDIRECT_DASH));
    Point beside = tooth.rimOut(90, LETTERS);
    out.add(
        new Mark.Label(
            Layer.LABELS, Ink.INDIRECT, subject, "IR", beside, LETTERS, Mark.Align.MIDDLE, true));
    return out;
  }

  List<Mark> reciprocalArm() {
    return toned(Ink.RECIPROCAL, TINT);
  }

  List<Mark> guidePlate() {
    return toned(Ink.GUIDE, TINT);
  }

  /** The double line of a prepared surface. */
  List<Mark> guidePlane() {
    return List.of(
        new Mark.Stroke(
            Layer.COMPONENTS, Ink.GUIDE, subject, laid.details(), false, PLANE_WIDTH, List.of()));
  }

  private List<Mark> toned(Ink ink, double tint) {
    return List.of(
        fill(ink, tint),
        new Mark.Stroke(Layer.COMPONENTS, ink, subject, edges(), false, LINE_WIDTH, List.of()));
  }

  private Mark fill(Ink ink, double opacity) {
    return new Mark.Fill(Layer.COMPONENTS, ink, subject, laid.body().boundaries(), opacity);
  }

  private List<Path> edges() {
    return laid.body().boundaries().stream().map(Outline::toPath).toList();
  }
}
