package saddlewright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.Arch;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Transform;
import saddlewright.geometry.Vector;

/** The key of a sheet: one sample and name for each role that the drawing really uses. */
final class Key {
  private static final double ROW = 4.4;
  private static final double COLUMN = 27;
  private static final double SAMPLE = 6;

  private static final Map<Ink, String> NAMES = new EnumMap<>(Ink.class);

  static {
    NAMES.put(Ink.METAL, "cast framework");
    NAMES.put(Ink.REST, "rest");
    NAMES.put(Ink.RETENTIVE, "retentive arm");
    NAMES.put(Ink.RECIPROCAL, "reciprocal arm");
    NAMES.put(Ink.GUIDE, "guide plate or plane");
    NAMES.put(Ink.INDIRECT, "indirect retainer (IR)");
    NAMES.put(Ink.ACRYLIC, "acrylic saddle");
    NAMES.put(Ink.MESH, "mesh under acrylic");
    NAMES.put(Ink.RELIEF, "relief");
    NAMES.put(Ink.UNDERCUT, "undercut, mm");
    NAMES.put(Ink.EXTRACTION, "to be extracted");
    NAMES.put(Ink.FINDING, "must be put right");
    NAMES.put(Ink.CAUTION, "should be put right");
    NAMES.put(Ink.ADVICE, "to consider");
    NAMES.put(Ink.QUESTION, "not judged");
    NAMES.put(Ink.NUMBER, "component number");
  }

  private Key() {}

  /**
   * Adds the key to the target, in columns from the point on.
   *
   * @param marks what the drawing uses
   * @param width room for the columns in mm
   * @return height used, in mm
   */
  static double place(List<Mark> marks, Point from, double width, List<Mark> target) {
    Set<Ink> used = EnumSet.noneOf(Ink.class);
    for (Mark m : marks) {
      // The blue of an undercut and of a retentive arm are two entries though they share a hue.
      used.add(m.ink());
    }
    int columns = Math.max(1, (int) (width / COLUMN));
    List<Mark> out = new ArrayList<>();
    int n = 0;
    for (Map.Entry<Ink, String> e : NAMES.entrySet()) {
      if (used.contains(e.getKey())) {
        Point at = from.plus(new Vector(n % columns * COLUMN, ROW / 2 + n / columns * ROW));
        out.addAll(sample(e.getKey(), at));
        out.add(
            SheetFurniture.words(
                e.getValue(), at.plus(new Vector(SAMPLE + 1.2, 0)), 2.0, Mark.Align.START, false));
        n++;
      }
    }
    target.addAll(out);
    return Math.ceil(n / (double) columns) * ROW;
  }

  private static List<Mark> sample(Ink ink, Point at) {
    return switch (ink) {
      case METAL -> swatch(at, Ink.METAL, Ink.METAL_LINE, true);
      case ACRYLIC -> stippled(at);
      case RETENTIVE -> arm(at, ink, true);
      case RECIPROCAL -> arm(at, ink, false);
      case REST -> swatch(at, ink, ink, false);
      case GUIDE -> line(at, ink, 0.9, List.of());
      case INDIRECT ->
          List.of(
              new Mark.Label(
                  Layer.LABELS,
                  ink,
                  Optional.empty(),
                  "IR",
                  at.plus(new Vector(SAMPLE / 2, 0)),
                  2.4,
                  Mark.Align.MIDDLE,
                  true));
      case MESH -> grid(at);
      case RELIEF -> line(at, ink, 0.3, List.of(0.6, 0.6));
      case UNDERCUT -> depth(at, ink);
      case EXTRACTION ->
          List.of(
              stroke(
                  ink,
                  0.4,
                  List.of(
                      Path.of(at.plus(new Vector(1.5, -1.3)), at.plus(new Vector(4.5, 1.3))),
                      Path.of(at.plus(new Vector(1.5, 1.3)), at.plus(new Vector(4.5, -1.3)))),
                  List.of()));
      case FINDING -> sign(at, Callout.Form.OCTAGON);
      case CAUTION -> sign(at, Callout.Form.TRIANGLE);
      case ADVICE -> sign(at, Callout.Form.CIRCLE);
      case QUESTION -> sign(at, Callout.Form.SQUARE);
      case NUMBER -> sign(at, Callout.Form.BALLOON);
      default -> List.of();
    };
  }

  private static List<Mark> sign(Point at, Callout.Form form) {
    Callout sample = new Callout(Subject.of(Arch.UPPER), form, false, form.letter(), "");
    return new PlacedCallout(sample, at.plus(new Vector(SAMPLE / 2, 0)), Optional.empty(), 1)
        .sign(Transform.IDENTITY);
  }

  private static List<Mark> swatch(Point at, Ink fill, Ink line, boolean hatched) {
    Outline box = box(at);
    List<Mark> out = new ArrayList<>();
    out.add(new Mark.Fill(Layer.LABELS, fill, Optional.empty(), List.of(box), hatched ? 1 : 0.35));
    if (hatched) {
      Region r = box.toRegion();
      List<Path> lines = new ArrayList<>();
      for (double d = -3; d < 8; d += 0.9) {
        lines.addAll(
            r.inside(Path.of(at.plus(new Vector(d, 1.6)), at.plus(new Vector(d + 3.2, -1.6)))));
      }
      out.add(stroke(line, 0.12, lines, List.of()));
    }
    out.add(stroke(line, 0.3, List.of(box.toPath()), List.of()));
    return out;
  }

  private static List<Mark> stippled(Point at) {
    Outline box = box(at);
    List<Point> dots = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      for (int k = 0; k < 2; k++) {
        dots.add(at.plus(new Vector(0.8 + i * 1.1, -0.5 + k + (i % 2) * 0.3 - 0.15)));
      }
    }
    return List.of(
        new Mark.Fill(Layer.LABELS, Ink.ACRYLIC, Optional.empty(), List.of(box), 1),
        new Mark.Dots(Layer.LABELS, Ink.ACRYLIC_LINE, Optional.empty(), dots, 0.12),
        stroke(Ink.ACRYLIC_LINE, 0.3, List.of(box.toPath()), List.of()));
  }

  private static List<Mark> arm(Point at, Ink ink, boolean arrow) {
    Path centre =
        Path.cubic(
            at.plus(new Vector(0, 0.8)),
            at.plus(new Vector(2, -1.6)),
            at.plus(new Vector(4, -1.2)),
            at.plus(new Vector(SAMPLE, 0.2)));
    List<Mark> out = new ArrayList<>();
    Outline body = arrow ? centre.ribbon(1.3, 0.6) : centre.ribbon(1.1, 1.1);
    out.add(new Mark.Fill(Layer.LABELS, ink, Optional.empty(), List.of(body), arrow ? 1 : 0.4));
    if (!arrow) {
      out.add(stroke(ink, 0.25, List.of(body.toPath()), List.of()));
    } else {
      Point tip = centre.end();
      Vector t = centre.tangentAt(centre.length());
      Outline half =
          Outline.of(
              List.of(
                  tip.plus(t.times(0.5)),
                  tip.minus(t.times(1.5)).plus(t.quarterTurn().times(1.3)),
                  tip.minus(t.times(1.2))));
      out.add(new Mark.Fill(Layer.LABELS, ink, Optional.empty(), List.of(half), 1));
    }
    return out;
  }

  private static List<Mark> grid(Point at) {
    List<Path> lines = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      lines.add(Path.of(at.plus(new Vector(0.5 + i, -1.2)), at.plus(new Vector(0.5 + i, 1.2))));
    }
    for (int k = -1; k <= 1; k++) {
      lines.add(Path.of(at.plus(new Vector(0.2, k)), at.plus(new Vector(5.8, k))));
    }
    return List.of(stroke(Ink.MESH, 0.18, lines, List.of()));
  }

  private static List<Mark> line(Point at, Ink ink, double width, List<Double> dash) {
    return List.of(stroke(ink, width, List.of(Path.of(at, at.plus(new Vector(SAMPLE, 0)))), dash));
  }

  private static Mark stroke(Ink ink, double width, List<Path> paths, List<Double> dash) {
    return new Mark.Stroke(Layer.LABELS, ink, Optional.empty(), paths, false, width, dash);
  }

  /** A short line with a depth beside it, as at a crown. */
  private static List<Mark> depth(Point at, Ink ink) {
    List<Mark> out = new ArrayList<>();
    Path arc = Path.of(at, at.plus(new Vector(SAMPLE * 0.4, 0)));
    out.add(stroke(ink, 0.45, List.of(arc), List.of()));
    out.add(
        new Mark.Label(
            Layer.LABELS,
            ink,
            Optional.empty(),
            "0.25",
            at.plus(new Vector(SAMPLE, 0)),
            1.5,
            Mark.Align.END,
            false));
    return out;
  }

  private static Outline box(Point at) {
    return Outline.of(
        List.of(
            at.plus(new Vector(0, -1.3)),
            at.plus(new Vector(SAMPLE, -1.3)),
            at.plus(new Vector(SAMPLE, 1.3)),
            at.plus(new Vector(0, 1.3))));
  }
}
