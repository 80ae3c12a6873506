package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Subject;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.geometry.Vector;

/**
 * A sign with its place in the frame of the arch.
 *
 * @param at its middle
 * @param target the end of its leader line; empty where the subject is the arch as a whole
 * @param size how much larger than on paper it is drawn
 */
public record PlacedCallout(Callout callout, Point at, Optional<Point> target, double size) {
  /** Half the height of a sign on paper, mm. */
  public static final double RADIUS = 2.1;

  private static final double LETTER = 2.5;

  /** Size of the number in a balloon, mm: 6.8 points. */
  static final double IN_BALLOON = 2.4;

  private static final double BALLOON_LINE = 0.2;
  private static final double THIN = 0.15;

  /** Paper on each side of a line that leads over the drawing, mm. */
  private static final double CASING = 0.15;

  private static final double NUMBER = 2.1;
  private static final double LINE = 0.35;
  private static final double LEADER = 0.2;
  private static final double DOT = 0.4;

  /** A leader is drawn from this distance on, mm. */
  private static final double APART = 0.7;

  /** How far the number reaches to the right of the sign, mm. */
  static double numberWidth(Callout callout, double size) {
    return callout.number().isEmpty()
        ? 0
        : size * (0.5 + Lettering.width(callout.number(), NUMBER, true));
  }

  private double radius() {
    return RADIUS * size;
  }

  /** The part of the sheet that sign and number cover. */
  public Box box(Transform place) {
    Point p = place.apply(at);
    return new Box(
        p.x() - radius(),
        p.y() - radius(),
        p.x() + radius() + numberWidth(callout, size),
        p.y() + radius());
  }

  /** Leaders below all signs, then the signs themselves, upright on the sheet. */
  public static List<Mark> marks(List<PlacedCallout> callouts, Transform place) {
    List<Mark> out = new ArrayList<>();
    callouts.forEach(c -> out.addAll(c.leader(place)));
    callouts.forEach(c -> out.addAll(c.sign(place)));
    return out;
  }

  private Ink ink() {
    return callout.answered() ? Ink.LABEL : callout.form().ink();
  }

  /** The line from the sign to its subject. */
  public List<Mark> leader(Transform place) {
    Point from = place.apply(at);
    Optional<Point> to =
        target.map(place::apply).filter(t -> from.distanceTo(t) >= radius() + APART * size);
    if (to.isEmpty()) {
      return List.of();
    }
    Optional<Subject> subject = Optional.of(callout.subject());
    Point start = from.towards(to.get(), edge(from, to.get()) / from.distanceTo(to.get()));
    if (callout.isNumber()) {
      return List.of(
          line(Ink.PAPER, subject, start, to.get(), THIN + 2 * CASING),
          new Mark.Dots(Layer.CALLOUTS, Ink.PAPER, subject, List.of(to.get()), DOT + CASING),
          line(ink(), subject, start, to.get(), THIN),
          new Mark.Dots(Layer.CALLOUTS, ink(), subject, List.of(to.get()), DOT));
    }
    return List.of(
        line(ink(), subject, start, to.get(), LEADER * size),
        new Mark.Dots(Layer.CALLOUTS, ink(), subject, List.of(to.get()), DOT * size));
  }

  private static Mark line(Ink ink, Optional<Subject> subject, Point from, Point to, double width) {
    return new Mark.Stroke(
        Layer.CALLOUTS, ink, subject, List.of(Path.of(from, to)), false, width, List.of());
  }

  /** How far the way out of the sign is, past the number where it leads through that. */
  private double edge(Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = Math.abs(to.y() - from.y());
    double reach = radius() + numberWidth(callout, size);
    boolean throughNumber = dx > radius() && dy * reach < dx * radius();
    return throughNumber ? Math.min(reach * Math.hypot(dx, dy) / dx, Math.hypot(dx, dy)) : radius();
  }

  /** The sign with its letter and number. */
  public List<Mark> sign(Transform place) {
    Point p = place.apply(at);
    if (callout.isNumber()) {
      return balloon(p);
    }
    Ink ink = ink();
    boolean filled = callout.form() == Callout.Form.OCTAGON && !callout.answered();
    Optional<Subject> subject = Optional.of(callout.subject());
    List<Mark> out = new ArrayList<>();
    Outline shape = shape(p);
    out.add(
        new Mark.Fill(
            Layer.CALLOUTS, filled ? ink : Ink.PAPER, subject, List.of(shape), filled ? 1 : 0.94));
    out.add(
        new Mark.Stroke(
            Layer.CALLOUTS,
            ink,
            subject,
            List.of(Path.through(shape.points())),
            true,
            LINE * size,
            callout.answered() ? List.of(0.7 * size, 0.5 * size) : List.of()));
    double drop = callout.form() == Callout.Form.TRIANGLE ? 0.45 * size : 0;
    out.add(
        new Mark.Label(
            Layer.CALLOUTS,
            filled ? Ink.PAPER : ink,
            subject,
            callout.letter(),
            p.plus(new Vector(0, drop)),
            callout.form() == Callout.Form.TRIANGLE ? 2.1 * size : LETTER * size,
            Mark.Align.MIDDLE,
            true));
    if (!callout.number().isEmpty()) {
      out.add(
          new Mark.Label(
              Layer.CALLOUTS,
              ink,
              subject,
              callout.number(),
              p.plus(new Vector(radius() + 0.4 * size, 0.8 * size)),
              NUMBER * size,
              Mark.Align.START,
              true));
    }
    return out;
  }

  private List<Mark> balloon(Point p) {
    Optional<Subject> subject = Optional.of(callout.subject());
    Outline shape = shape(p);
    return List.of(
        new Mark.Fill(Layer.CALLOUTS, Ink.PAPER, subject, List.of(shape), 1),
        new Mark.Stroke(
            Layer.CALLOUTS,
            ink(),
            subject,
            List.of(Path.through(shape.points())),
            true,
            BALLOON_LINE,
            List.of()),
        new Mark.Label(
            Layer.CALLOUTS,
            ink(),
            subject,
            callout.letter(),
            p,
            callout.letter().length() > 2 ? IN_BALLOON * 0.96 : IN_BALLOON,
            Mark.Align.MIDDLE,
            false));
  }

  private Outline shape(Point p) {
    return switch (callout.form()) {
      case OCTAGON -> ring(p, 8, radius(), Math.PI / 8);
      case TRIANGLE ->
          Outline.of(
              List.of(
                  p.plus(new Vector(0, -radius() - 0.1 * size)),
                  p.plus(new Vector(radius() + 0.25 * size, radius() - 0.25 * size)),
                  p.plus(new Vector(-radius() - 0.25 * size, radius() - 0.25 * size))));
      case CIRCLE -> ring(p, 40, radius() - 0.15 * size, 0);
      case SQUARE -> ring(p, 4, radius() * 1.25, Math.PI / 4);
      case BALLOON -> ring(p, 40, radius(), 0);
    };
  }

  private static Outline ring(Point p, int corners, double radius, double turn) {
    List<Point> out = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = turn + 2 * Math.PI * i / corners;
      out.add(p.plus(new Vector(radius * Math.cos(a), radius * Math.sin(a))));
    }
    return Outline.of(out);
  }
}
