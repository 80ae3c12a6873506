package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/** Charted bony tori, in usual size and place (from memory of casts). */
final class Tori {
  private static final double PALATAL_HALF_BREADTH = 6;
  private static final double PALATAL_LENGTH = 22;

  /** Half breadth of each knob of a mandibular torus, from back to front, mm. */
  private static final double[] MANDIBULAR_KNOB = {1.9, 2.5, 2.2};

  private static final double BELOW_MARGIN = 2.2;

  private Tori() {}

  static Optional<Outline> of(ArchForm form, Torus torus) {
    if (!form.chart().softTissues().tori().contains(torus)
        || (torus == Torus.PALATAL) != (form.arch() == Arch.UPPER)) {
      return Optional.empty();
    }
    return switch (torus) {
      case PALATAL -> Optional.of(palatal(form));
      case MANDIBULAR_RIGHT -> mandibular(form, Tooth.T45, Tooth.T44, Tooth.T43);
      case MANDIBULAR_LEFT -> mandibular(form, Tooth.T35, Tooth.T34, Tooth.T33);
    };
  }

  private static Outline palatal(ArchForm form) {
    double front = Palate.papillaAt(form) + 9;
    double back = Math.min(front + PALATAL_LENGTH, Palate.limitOnMidline(form) - 4);
    double half = Math.max(4, (back - front) / 2);
    double y = front + half;
    List<Point> knots = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      double t = 2 * Math.PI * i / 20;
      // Broader in front of the middle, with a shallow waist: tori are lobed more often than not.
      double breadth =
          PALATAL_HALF_BREADTH * (1 + 0.12 * Math.cos(t)) * (1 - 0.08 * Math.cos(2 * t - Math.PI));
      knots.add(new Point(breadth * Math.sin(t), y - half * Math.cos(t)));
    }
    return Outline.smooth(knots);
  }

  /**
   * Two or three knobs of bone in a row beside the canine and premolars; none where all of their
   * places have closed.
   */
  private static Optional<Outline> mandibular(ArchForm form, Tooth... beside) {
    List<Region> knobs = new ArrayList<>();
    for (int i = 0; i < beside.length; i++) {
      PlacedTooth t = form.tooth(beside[i]);
      if (t.isClosed()) {
        continue;
      }
      double size = MANDIBULAR_KNOB[i];
      Vector in = t.outward().negated();
      Point c = t.rim(t.degreesAcross(Face.LINGUAL)).plus(in.times(BELOW_MARGIN + size));
      knobs.add(
          Outline.ellipse(c, 1.45 * size, size, t.outward().quarterTurn().angle()).toRegion());
    }
    for (int i = knobs.size() - 1; i > 0; i--) {
      Point a = knobs.get(i).innerPoint();
      knobs.add(Region.band(Path.of(a, knobs.get(i - 1).innerPoint()), MANDIBULAR_KNOB[0]));
    }
    return Region.union(knobs).filleted(1.2).outlines().stream().findFirst();
  }
}
