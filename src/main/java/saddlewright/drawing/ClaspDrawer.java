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
 * Draws retentive arms: solid with half an arrowhead at the tip, on the side of the tooth, so that
 * they can be told from reciprocal arms in black ink (common practice). Wire shows a bright line
 * along it, polymer is light inside.
 */
final class ClaspDrawer {
  private static final double OUTLINE_WIDTH = 0.17;
  private static final double HEAD_LENGTH = 1.9;
  private static final double HEAD_DEPTH = 1.25;
  private static final double HEAD_AHEAD = 0.45;
  private static final double HEAD_INTO_CROWN = 1.0;
  private static final double GLINT_WIDTH = 0.2;

  private final Laid laid;
  private final Optional<Subject> subject;

  ClaspDrawer(Laid laid, Optional<Subject> subject) {
    this.laid = laid;
    this.subject = subject;
  }

  List<Mark> marks(Clasp clasp, PlacedTooth tooth) {
    List<Mark> out = new ArrayList<>();
    List<Outline> rings = laid.body().boundaries();
    if (rings.isEmpty()) {
      return out;
    }
    boolean polymer = !clasp.material().isCast() && !clasp.material().isWrought();
    List<Outline> head = laid.centreline().map(line -> head(line, tooth, clasp)).stream().toList();
    // All outlines first and then all fills, so that arm and arrowhead are one shape.
    out.add(outline(rings));
    out.add(outline(head));
    out.add(fill(polymer ? Ink.PAPER : Ink.RETENTIVE, rings, 1));
    if (polymer) {
      out.add(fill(Ink.RETENTIVE, rings, 0.35));
    }
    out.add(fill(Ink.RETENTIVE, head, 1));
    if (clasp.material().isWrought()) {
      laid.centreline()
          .filter(line -> line.length() > 2 * HEAD_LENGTH)
          .ifPresent(line -> out.add(glint(line)));
    }
    return out;
  }

  private Mark glint(Path line) {
    return new Mark.Stroke(
        Layer.COMPONENTS,
        Ink.PAPER,
        subject,
        List.of(line.between(0.5, line.length() - HEAD_LENGTH)),
        false,
        GLINT_WIDTH,
        List.of());
  }

  /**
   * Half an arrowhead at the tip, barbed towards the tooth, or away from the origin of an upright.
   */
  private static Outline head(Path line, PlacedTooth tooth, Clasp clasp) {
    Point tip = line.end();
    double length = line.length();
    Vector ahead = line.at(length - 0.6).to(tip).unit();
    Vector inwards = tip.to(tooth.centre()).unit();
    Vector side = ahead.quarterTurn();
    Vector origin = tooth.direction(PlacedTooth.degrees(clasp.origin()));
    boolean upright = ahead.dot(inwards) > 0.75;
    double towards = upright ? -side.dot(origin) : side.dot(inwards);
    side = towards < 0 ? side.negated() : side;
    double reach = upright ? HEAD_INTO_CROWN : HEAD_AHEAD;
    Point back = tip.minus(ahead.times(HEAD_LENGTH - reach));
    return Outline.of(
        List.of(
            tip.plus(ahead.times(reach)),
            back.plus(side.times(HEAD_DEPTH)),
            back.plus(ahead.times(0.35)).plus(side.times(0.1)),
            back.plus(ahead.times(0.35)).minus(side.times(0.15))));
  }

  private Mark outline(List<Outline> rings) {
    return new Mark.Stroke(
        Layer.COMPONENTS,
        Ink.METAL_LINE,
        subject,
        rings.stream().map(Outline::toPath).toList(),
        true,
        2 * OUTLINE_WIDTH,
        List.of());
  }

  private Mark fill(Ink ink, List<Outline> rings, double opacity) {
    return new Mark.Fill(Layer.COMPONENTS, ink, subject, rings, opacity);
  }
}
