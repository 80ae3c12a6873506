package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** Charted bony tori, in usual size and place (from memory of casts). */
final class Tori {
  private static final double PALATAL_HALF_BREADTH = 6;
  private static final double PALATAL_HALF_LENGTH = 11;
  private static final double MANDIBULAR_HALF_BREADTH = 2.6;

  private Tori() {}

  static Optional<Outline> of(ArchForm form, Torus torus) {
    if (!form.chart().softTissues().tori().contains(torus)
        || (torus == Torus.PALATAL) != (form.arch() == Arch.UPPER)) {
      return Optional.empty();
    }
    return Optional.of(
        switch (torus) {
          case PALATAL -> palatal(form);
          case MANDIBULAR_RIGHT -> mandibular(form, Tooth.T46, Tooth.T45, Tooth.T44, Tooth.T43);
          case MANDIBULAR_LEFT -> mandibular(form, Tooth.T36, Tooth.T35, Tooth.T34, Tooth.T33);
        });
  }

  private static Outline palatal(ArchForm form) {
    double front = Palate.papillaAt(form) + 9;
    double y = front + PALATAL_HALF_LENGTH;
    List<Point> knots = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double t = 2 * Math.PI * i / 16;
      // A shallow waist at the raphe's sides: tori are lobed more often than not.
      double lobe = 1 + 0.07 * Math.cos(4 * t);
      knots.add(
          new Point(
              PALATAL_HALF_BREADTH * lobe * Math.sin(t),
              y - PALATAL_HALF_LENGTH * lobe * Math.cos(t)));
    }
    return Outline.smooth(knots);
  }

  private static Outline mandibular(ArchForm form, Tooth... beside) {
    List<Point> near = new ArrayList<>();
    List<Point> far = new ArrayList<>();
    for (int i = 0; i < beside.length; i++) {
      PlacedTooth t = form.tooth(beside[i]);
      boolean end = i == 0 || i == beside.length - 1;
      Point margin = t.rim(t.degreesAcross(Face.LINGUAL));
      Vector in = t.outward().negated();
      near.add(margin.plus(in.times(end ? 3.2 : 2.4)));
      if (!end) {
        far.add(margin.plus(in.times(2.4 + 2 * MANDIBULAR_HALF_BREADTH)));
      }
    }
    List<Point> knots = new ArrayList<>(near);
    for (int i = far.size() - 1; i >= 0; i--) {
      knots.add(far.get(i));
      if (i > 0) {
        Point notch = far.get(i).midpoint(far.get(i - 1));
        knots.add(notch.towards(near.get(i).midpoint(near.get(i + 1)), 0.16));
      }
    }
    return Outline.smooth(knots);
  }
}
