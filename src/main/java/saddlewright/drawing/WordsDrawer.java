package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.design.UnknownComponent;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/** Draws notes with their leader lines, and the marks of components of unknown kinds. */
final class WordsDrawer {
  private static final double SIZE = 2.4;
  private static final double LINE_HEIGHT = 1.25 * SIZE;

  private static final double LEADER_WIDTH = 0.15;
  private static final double DOT_RADIUS = 0.4;
  private static final double GAP = 0.6;

  private final Laid laid;
  private final Optional<Subject> subject;

  WordsDrawer(Laid laid, Optional<Subject> subject) {
    this.laid = laid;
    this.subject = subject;
  }

  /** The words, centred at their place, and a thin line with a dot at what they speak of. */
  List<Mark> note(Note note, boolean downwards) {
    List<Mark> out = new ArrayList<>();
    List<String> lines = note.text().lines().toList();
    Point at = new Point(note.x(), note.y());
    for (int i = 0; i < lines.size(); i++) {
      double drop = (i - (lines.size() - 1) / 2.0) * LINE_HEIGHT * (downwards ? 1 : -1);
      out.add(words(lines.get(i), at.plus(new Vector(0, drop)), Layer.NOTES));
    }
    Box box = box(lines, at);
    for (Path leader : laid.details()) {
      Point target = leader.end();
      if (!box.contains(target)) {
        Point from = edge(box, target);
        out.add(
            new Mark.Stroke(
                Layer.NOTES,
                Ink.NOTE,
                subject,
                List.of(Path.of(from, target)),
                false,
                LEADER_WIDTH,
                List.of()));
        out.add(new Mark.Dots(Layer.NOTES, Ink.NOTE, subject, List.of(target), DOT_RADIUS));
      }
    }
    Outline grip =
        Outline.of(
            List.of(
                new Point(box.minX(), box.minY()),
                new Point(box.maxX(), box.minY()),
                new Point(box.maxX(), box.maxY()),
                new Point(box.minX(), box.maxY())));
    out.add(new Mark.Fill(Layer.NOTES, Ink.NOTE, subject, List.of(grip), 0));
    return out;
  }

  /** A question mark and the kind, one below the other at the open end of the arch. */
  List<Mark> unknown(UnknownComponent component, Layout layout) {
    List<Laid> strangers = layout.all(UnknownComponent.class);
    int row = Math.max(0, strangers.indexOf(laid));
    Box box = layout.form().box();
    Point at = new Point(0, box.maxY() - 3 - row * LINE_HEIGHT);
    return List.of(words("? " + component.kind(), at, Layer.NOTES));
  }

  private Mark words(String text, Point at, Layer layer) {
    return new Mark.Label(layer, Ink.NOTE, subject, text, at, SIZE, Mark.Align.MIDDLE, false);
  }

  private static Box box(List<String> lines, Point at) {
    double longest =
        lines.stream().mapToDouble(l -> Lettering.width(l, SIZE, false)).max().orElse(0);
    double w = Math.max(SIZE, longest) / 2 + GAP;
    double h = Math.max(1, lines.size()) * LINE_HEIGHT / 2 + GAP / 2;
    return new Box(at.x() - w, at.y() - h, at.x() + w, at.y() + h);
  }

  /** Where the straight line from the middle of the box to the target leaves it. */
  private static Point edge(Box box, Point target) {
    Vector v = box.centre().to(target);
    double sx = v.x() == 0 ? Double.POSITIVE_INFINITY : box.width() / 2 / Math.abs(v.x());
    double sy = v.y() == 0 ? Double.POSITIVE_INFINITY : box.height() / 2 / Math.abs(v.y());
    return box.centre().plus(v.times(Math.min(1, Math.min(sx, sy))));
  }
}
