package saddlewright.drawing;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;

/** One thing to be painted, in millimetres. */
public sealed interface Mark {
  Layer layer();

  Ink ink();

  /** What it is about; empty for furniture of the sheet. */
  Optional<Subject> subject();

  Mark transformed(Transform t);

  /**
   * Lines of one width.
   *
   * @param width in mm
   * @param dash lengths of dash and gap in mm; empty for a solid line
   */
  record Stroke(
      Layer layer,
      Ink ink,
      Optional<Subject> subject,
      List<Path> paths,
      boolean closed,
      double width,
      List<Double> dash)
      implements Mark {
    public Stroke {
      paths = List.copyOf(paths);
      dash = List.copyOf(dash);
    }

    @Override
    public Stroke transformed(Transform t) {
      return new Stroke(
          layer,
          ink,
          subject,
          paths.stream().map(p -> p.transformed(t)).toList(),
          closed,
          width,
          dash);
    }
  }

  /**
   * An area between outlines, filled by the even-odd rule.
   *
   * @param opacity 0 (clear) to 1
   */
  record Fill(
      Layer layer, Ink ink, Optional<Subject> subject, List<Outline> outlines, double opacity)
      implements Mark {
    public Fill {
      outlines = List.copyOf(outlines);
    }

    @Override
    public Fill transformed(Transform t) {
      return new Fill(
          layer, ink, subject, outlines.stream().map(o -> o.transformed(t)).toList(), opacity);
    }
  }

  /** Round dots of one radius in mm (stippling). */
  record Dots(Layer layer, Ink ink, Optional<Subject> subject, List<Point> points, double radius)
      implements Mark {
    public Dots {
      points = List.copyOf(points);
    }

    @Override
    public Dots transformed(Transform t) {
      return new Dots(layer, ink, subject, points.stream().map(t::apply).toList(), radius);
    }
  }

  /**
   * Upright words.
   *
   * @param at the middle of the words' height, at the side that the alignment names
   * @param size height of the type (em) in mm
   */
  record Label(
      Layer layer,
      Ink ink,
      Optional<Subject> subject,
      String text,
      Point at,
      double size,
      Align align,
      boolean bold)
      implements Mark {
    @Override
    public Label transformed(Transform t) {
      return new Label(layer, ink, subject, text, t.apply(at), size, align, bold);
    }
  }

  /** Where words lie from their place. */
  enum Align {
    START,
    MIDDLE,
    END
  }
}
