package saddlewright.layout;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * How far round a crown the metal of a denture holds it, seen from above.
 *
 * <p>Every part that touches the crown takes a sector about its centre. What counts is not the sum
 * of the sectors but the widest opening between them, through which the crown could slip: the
 * encirclement is the full turn less that opening. So an arm that runs on without a break and three
 * separate points of contact are measured alike, as is taught for both (notes of McCracken's
 * Removable Partial Prosthodontics, read).
 *
 * <p>Acrylic does not count: it neither meets the crown exactly nor keeps its shape.
 */
public final class Embrace {
  private static final int STEPS = 180;
  private static final double STEP = 360.0 / STEPS;

  /** Farthest from the rim at which the centreline of a part still touches the crown, mm. */
  private static final double NEAR = 0.9;

  /** The same for a strut, which is broader. */
  private static final double NEAR_STRUT = 1.0;

  /** Half of the zone that a bar on the teeth touches, degrees. */
  private static final double BAR_HALF = 45;

  private final PlacedTooth crown;
  private final BitSet touched = new BitSet(STEPS);

  private Embrace(PlacedTooth crown) {
    this.crown = crown;
  }

  /** The hold of all parts of a layout on one crown. */
  public static Embrace of(Layout layout, Tooth tooth) {
    Embrace e = new Embrace(layout.form().tooth(tooth));
    layout.all().forEach(e::add);
    return e;
  }

  /** The full turn less the widest opening, degrees; 0 when nothing touches the crown. */
  public double degrees() {
    if (touched.isEmpty()) {
      return 0;
    }
    int widest = 0;
    int from = touched.nextSetBit(0);
    for (int i = 0, run = 0; i <= STEPS; i++) {
      run = touched.get((from + i) % STEPS) ? 0 : run + 1;
      widest = Math.max(widest, run);
    }
    return 360 - widest * STEP;
  }

  /** Whether any part touches the crown in a direction of its frame, in degrees. */
  public boolean touches(double degrees) {
    return touched.get(step(degrees));
  }

  private void add(Laid laid) {
    Component c = laid.component();
    Tooth tooth = crown.tooth();
    if (c instanceof MinorConnector m) {
      if (m.tooth() == tooth || isBeside(m)) {
        along(laid, Strut.WIDTH_AT_TOOTH / 4, NEAR_STRUT);
      }
    } else if (!c.teeth().contains(tooth)) {
      return;
    } else if (c instanceof Rest r) {
      rest(r, laid);
    } else if (c instanceof ReciprocalArm a) {
      swept(new Sweep(a.origin(), a.face()), laid);
    } else if (c instanceof Clasp k) {
      clasp(k, laid);
    } else if (c instanceof GuidePlate) {
      along(laid, GuidePlacement.THICKNESS / 2, NEAR);
    } else if (c instanceof Plating) {
      sector(180, 360);
    } else if (c instanceof MajorConnector m) {
      connector(m.form());
    }
  }

  /** Whether the strut stands in the embrasure between its own tooth and this one. */
  private boolean isBeside(MinorConnector m) {
    for (End end : End.values()) {
      if (crown.tooth().neighbour(end).equals(Optional.of(m.tooth()))) {
        return m.place() == MinorConnector.embrasure(m.tooth().endTowards(crown.tooth()));
      }
    }
    return false;
  }

  private void connector(ConnectorForm form) {
    switch (form) {
      case LINGUAL_PLATE -> sector(180, 360);
      case DENTAL_BAR -> around(PlacedTooth.degrees(Face.LINGUAL), BAR_HALF);
      case CONTINUOUS_BAR -> {
        if (crown.tooth().position() <= 4) {
          around(PlacedTooth.degrees(Face.LINGUAL), BAR_HALF);
        }
      }
      default -> {}
    }
  }

  private void rest(Rest r, Laid laid) {
    double half = laid.measure(Measure.WIDTH).orElse(RestPlacement.CINGULUM_LENGTH) / 2;
    for (End end : End.values()) {
      boolean there = r.site().end().equals(Optional.of(end)) || r.form() == Rest.Form.DOUBLE;
      if (there && !r.site().isIncisal()) {
        around(PlacedTooth.degrees(end), seen(half, crown.halfWidth()));
      }
    }
    if (r.site().end().isEmpty()) {
      double length = RestPlacement.CINGULUM_LENGTH / 2;
      around(PlacedTooth.degrees(Face.LINGUAL), seen(length, crown.halfDepth()));
    }
  }

  private void clasp(Clasp k, Laid laid) {
    if (k.form().isOcclusallyApproaching()) {
      boolean round = k.form().isSelfReciprocating();
      Face first = round ? k.tip().face().opposite() : k.tip().face();
      swept(new Sweep(k.origin(), first), laid);
      return;
    }
    double half =
        k.form() == ClaspForm.I_BAR ? GingivalArm.I_CONTACT / 2 : Strut.WIDTH_AT_TOOTH / 4;
    along(laid, half, NEAR);
    laid.tip()
        .filter(t -> k.form() == ClaspForm.T_BAR)
        .ifPresent(t -> around(crown.angleOf(t), seen(2 * GingivalArm.T_HALF, radius(t))));
  }

  /** From the contact at the origin as far as the arm goes. */
  private void swept(Sweep sweep, Laid laid) {
    laid.measure(Measure.ENCIRCLEMENT_DEGREES)
        .ifPresent(
            d -> {
              double to = sweep.degrees(d);
              sector(Math.min(sweep.degrees(0), to), Math.max(sweep.degrees(0), to));
            });
  }

  private void along(Laid laid, double half, double near) {
    for (Point p : laid.centreline().map(Path::points).orElse(List.of())) {
      if (crown.centre().distanceTo(p) > crown.halfWidth() + crown.halfDepth() + near) {
        continue;
      }
      double angle = crown.angleOf(p);
      double outside = crown.centre().distanceTo(p) - crown.centre().distanceTo(crown.rim(angle));
      if (Math.abs(outside) < near) {
        around(angle, seen(half, radius(p)));
      }
    }
  }

  private double radius(Point p) {
    return Math.max(1, crown.centre().distanceTo(p));
  }

  /** The angle in degrees that so many mm take at a distance. */
  private static double seen(double mm, double distance) {
    return Math.toDegrees(Math.atan2(mm, distance));
  }

  private void around(double degrees, double half) {
    sector(degrees - half, degrees + half);
  }

  private void sector(double from, double to) {
    int last = (int) Math.floor(to / STEP);
    for (int i = (int) Math.floor(from / STEP); i <= last; i++) {
      touched.set(Math.floorMod(i, STEPS));
    }
  }

  private static int step(double degrees) {
    return Math.floorMod((int) Math.floor(degrees / STEP), STEPS);
  }
}
