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
 * Draws retentive arms: solid with half an arrowhead at the tip, on the side of the tooth, so that they
 * can be told from reciprocal arms in black ink (common practice). Wire shows a bright line along it,
 * polymer is light inside.
 */
final class ClaspDrawer {
  private static final double OUTLINE_WIDTH = 0.22;
  private static final double HEAD_LENGTH = 1.9;
  private static final double HEAD_DEPTH = 1.25;
  private static final double HEAD_AHEAD = 0.45;
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
    if (polymer) {
      out.add(new Mark.Fill(Layer.COMPONENTS, Ink.PAPER, subject, rings, 1));
    }
    out.add(new Mark.Fill(Layer.COMPONENTS, Ink.RETENTIVE, subject, rings, polymer ? 0.35 : 1));
    out.add(
        stroke(
            polymer ? Ink.RETENTIVE : Ink.METAL_LINE,
            rings.stream().map(Outline::toPath).toList(),
            polymer ? 0.3 : OUTLINE_WIDTH));
    laid.centreline()
        .ifPresent(
            line -> {
              if (clasp.material().isWrought() && line.length() > 2) {
                Path glint = line.between(0.5, line.length() - HEAD_LENGTH);
                out.add(stroke(Ink.PAPER, List.of(glint), GLINT_WIDTH));
              }
              Outline head = head(line, tooth, clasp);
              out.add(new Mark.Fill(Layer.COMPONENTS, Ink.RETENTIVE, subject, List.of(head), 1));
              out.add(stroke(Ink.METAL_LINE, List.of(head.toPath()), OUTLINE_WIDTH));
            });
    return out;
  }

  /** Half an arrowhead at the tip, barbed towards the tooth, or away from the origin of an upright. */
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
    Point back = tip.minus(ahead.times(HEAD_LENGTH - HEAD_AHEAD));
    return Outline.of(
        List.of(
            tip.plus(ahead.times(HEAD_AHEAD)),
            back.plus(side.times(HEAD_DEPTH)),
            back.plus(ahead.times(0.35)).plus(side.times(0.1)),
            back.plus(ahead.times(0.35)).minus(side.times(0.15))));
  }

  private Mark stroke(Ink ink, List<Path> lines, double width) {
    return new Mark.Stroke(Layer.COMPONENTS, ink, subject, lines, false, width, List.of());
  }
}
