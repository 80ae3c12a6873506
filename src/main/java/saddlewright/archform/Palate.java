package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.SoftTissues.PalateForm;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * Landmarks of the hard palate of an upper arch; a lower arch has none. Sizes from memory of casts.
 */
final class Palate {
  private static final double PAPILLA_BEHIND_MARGIN = 4.2;
  private static final double PAPILLA_HALF_LENGTH = 2.3;
  private static final double PAPILLA_HALF_BREADTH = 1.5;

  /** Rugae of one side: where they start and end, mm from the midline and behind the papilla. */
  private static final double[][] RUGAE = {
    {1.5, 2.4, 8.8, -0.2}, {1.7, 5.6, 11.2, 4.0}, {1.9, 8.8, 10.8, 8.6}
  };

  private static final double RUGA_WAVE = 0.5;

  private static final double HARD_PALATE_BEHIND_SECOND_MOLAR = 8;
  private static final double FOVEA_HALF_DISTANCE = 1.7;
  private static final double FOVEA_BEHIND_LIMIT = 1.3;

  private Palate() {}

  private static double front(ArchForm form) {
    PlacedTooth a = form.tooth(Tooth.T11);
    PlacedTooth b = form.tooth(Tooth.T21);
    return Math.max(
        a.rim(a.degreesAcross(Face.LINGUAL)).y(), b.rim(b.degreesAcross(Face.LINGUAL)).y());
  }

  static double papillaAt(ArchForm form) {
    return front(form) + PAPILLA_BEHIND_MARGIN;
  }

  static Optional<Outline> papilla(ArchForm form) {
    if (form.arch() == Arch.LOWER) {
      return Optional.empty();
    }
    double y = papillaAt(form);
    double l = PAPILLA_HALF_LENGTH;
    double w = PAPILLA_HALF_BREADTH;
    return Optional.of(
        Outline.smooth(
            List.of(
                new Point(0, y - l),
                new Point(w * 0.75, y - 0.55 * l),
                new Point(w, y + 0.15 * l),
                new Point(w * 0.55, y + 0.78 * l),
                new Point(0, y + l),
                new Point(-w * 0.55, y + 0.78 * l),
                new Point(-w, y + 0.15 * l),
                new Point(-w * 0.75, y - 0.55 * l))));
  }

  static List<Path> rugae(ArchForm form) {
    if (form.arch() == Arch.LOWER) {
      return List.of();
    }
    double y = papillaAt(form) + PAPILLA_HALF_LENGTH - 1.2;
    List<Path> out = new ArrayList<>();
    for (int sign = -1; sign <= 1; sign += 2) {
      for (double[] r : RUGAE) {
        List<Point> knots = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
          double t = i / 8.0;
          double wave = RUGA_WAVE * Math.sin(2 * Math.PI * t * 1.25 + r[1]) * Math.sin(Math.PI * t);
          knots.add(
              new Point(
                  sign * (r[0] + (r[2] - r[0]) * t), y + r[1] + (r[3] - r[1]) * t * t + wave));
        }
        out.add(Path.smooth(knots));
      }
    }
    return out;
  }

  static Optional<Path> raphe(ArchForm form) {
    if (form.arch() == Arch.LOWER) {
      return Optional.empty();
    }
    double from = papillaAt(form) + PAPILLA_HALF_LENGTH + 0.8;
    return Optional.of(Path.of(new Point(0, from), new Point(0, middle(form))));
  }

  /** Where hard and soft palate meet on the midline, mm from the incisal midpoint. */
  private static double middle(ArchForm form) {
    double usual = (behind(form, 1) + behind(form, 14)) / 2 + HARD_PALATE_BEHIND_SECOND_MOLAR;
    return form.chart().softTissues().palateLimit().orElse(usual);
  }

  private static double behind(ArchForm form, int place) {
    PlacedTooth t = form.tooth(Tooth.at(form.arch(), place));
    return t.centre().y() + t.halfWidth();
  }

  static Path limit(ArchForm form) {
    double y = middle(form);
    Point right = Pads.end(form, Side.RIGHT);
    Point left = Pads.end(form, Side.LEFT);
    return Path.smooth(
        List.of(
            right.plus(new Vector(2.5, 0.4)),
            new Point(right.x() * 0.55, y + (right.y() - y) * 0.34),
            new Point(right.x() * 0.18, y + 0.2),
            new Point(0, y),
            new Point(left.x() * 0.18, y + 0.2),
            new Point(left.x() * 0.55, y + (left.y() - y) * 0.34),
            left.plus(new Vector(-2.5, 0.4))));
  }

  /** The soft palate's border on the midline, for what must stay in front of it, mm. */
  static double limitOnMidline(ArchForm form) {
    return middle(form);
  }

  static List<Point> foveae(ArchForm form) {
    if (form.arch() == Arch.LOWER) {
      return List.of();
    }
    double y = middle(form) + FOVEA_BEHIND_LIMIT;
    return List.of(new Point(-FOVEA_HALF_DISTANCE, y), new Point(FOVEA_HALF_DISTANCE, y));
  }

  /** Contour lines of the vault: more of them, the higher it is charted. */
  static List<Path> vault(ArchForm form) {
    if (form.arch() == Arch.LOWER) {
      return List.of();
    }
    int lines =
        switch (form.chart().softTissues().palate().orElse(PalateForm.MEDIUM)) {
          case SHALLOW -> 0;
          case MEDIUM -> 1;
          case HIGH -> 2;
        };
    List<Path> out = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      double share = 0.42 + 0.2 * i;
      for (Side side : Side.values()) {
        List<Point> knots = new ArrayList<>();
        for (int position = 4; position <= 7; position++) {
          PlacedTooth t =
              form.tooth(Tooth.at(Arch.UPPER, side == Side.RIGHT ? 8 - position : 7 + position));
          Point p = t.rim(t.degreesAcross(Face.LINGUAL));
          knots.add(new Point(p.x() * (1 - share), p.y() + 1));
        }
        out.add(Path.smooth(knots));
      }
    }
    return out;
  }
}
