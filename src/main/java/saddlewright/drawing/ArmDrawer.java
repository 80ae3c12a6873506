package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.layout.Laid;

/**
 * Draws arms: retentive ones solid with half an arrowhead at the tip on the side of the tooth, so that
 * they can be told from reciprocal ones in black ink alone (common practice); reciprocal ones even and
 * open.
 */
final class ArmDrawer {
  private static final double ARROW_LENGTH = 2.1;
  private static final double ARROW_WIDTH = 1.25;

  private ArmDrawer() {}

  static List<Mark> retentive(
      Clasp clasp, Laid laid, PlacedTooth tooth, Optional<Subject> subject) {
    List<Mark> out = new ArrayList<>();
    List<Outline> rings = laid.body().boundaries();
    boolean wire = clasp.material().isWrought();
    out.add(new Mark.Fill(Layer.COMPONENTS, Ink.RETENTIVE, subject, rings, wire ? 0.35 : 0.85));
    out.add(line(rings, Ink.RETENTIVE, subject, 0.25));
    laid.centreline()
        .ifPresent(
            c ->
                out.add(
                    new Mark.Fill(
                        Layer.COMPONENTS,
                        Ink.RETENTIVE,
                        subject,
                        List.of(arrow(clasp, laid, c, tooth)),
                        1)));
    return out;
  }

  static List<Mark> reciprocal(Laid laid, Optional<Subject> subject) {
    List<Outline> rings = laid.body().boundaries();
    return List.of(
        new Mark.Fill(Layer.COMPONENTS, Ink.RECIPROCAL, subject, rings, 0.3),
        line(rings, Ink.RECIPROCAL, subject, 0.35));
  }

  private static Outline arrow(Clasp clasp, Laid laid, Path centre, PlacedTooth tooth) {
    // Of a bar arm the foot is the end that grips: its line lies in the details.
    Path run =
        clasp.form().isGingivallyApproaching() && !laid.details().isEmpty()
                && laid.details().get(0).length() > 2.4
            ? laid.details().get(0)
            : centre;
    Point tip = run.end();
    Vector along = run.tangentAt(run.length());
    Vector side = along.quarterTurn();
    if (side.dot(tip.to(tooth.centre())) < 0) {
      side = side.negated();
    }
    Point front = tip.plus(along.times(0.55));
    Point back = front.minus(along.times(ARROW_LENGTH));
    return Outline.of(
        List.of(front, back.plus(side.times(ARROW_WIDTH)), back.plus(along.times(0.35))));
  }

  private static Mark line(
      List<Outline> rings, Ink ink, Optional<Subject> subject, double width) {
    return new Mark.Stroke(
        Layer.COMPONENTS,
        ink,
        subject,
        rings.stream().map(Outline::toPath).toList(),
        true,
        width,
        List.of());
  }
}
