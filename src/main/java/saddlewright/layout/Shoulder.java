package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Face;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Where an arm leaves the rest and minor connector and comes round the corner of the crown. */
final class Shoulder {
  /** Sweep at which an arm begins to hug the crown beside a saddle, degrees. */
  private static final double FREE = 11;

  /** The same beside a standing neighbour, whose contact it must pass. */
  private static final double BESIDE_NEIGHBOUR = 29;

  private final CrownContour crown;
  private final Sweep sweep;
  private final boolean neighbour;

  private Shoulder(CrownContour crown, Sweep sweep, boolean neighbour) {
    this.crown = crown;
    this.sweep = sweep;
    this.neighbour = neighbour;
  }

  static Shoulder of(Ground ground, CrownContour crown, Sweep sweep) {
    return new Shoulder(crown, sweep, Beside.stands(ground, crown.tooth().tooth(), sweep.origin()));
  }

  /** Sweep at which the arm hugs the crown, degrees. */
  double begins() {
    return neighbour ? BESIDE_NEIGHBOUR : FREE;
  }

  /** From the marginal ridge round the corner, and on along an arm. */
  Path into(List<Point> arm) {
    List<Point> knots = new ArrayList<>();
    knots.add(crown.at(sweep.degrees(neighbour ? 12 : 3), neighbour ? -0.45 : 0.1));
    knots.add(crown.at(sweep.degrees(neighbour ? 21 : 7), neighbour ? 0.1 : 0.35));
    knots.addAll(arm);
    return Path.smooth(knots);
  }

  /** From the middle of the occlusal surface over the ridge, and on along an arm. */
  Path overEmbrasure(List<Point> arm) {
    List<Point> knots = new ArrayList<>();
    double m = Math.cos(Math.toRadians(sweep.degrees(0)));
    double b = sweep.first() == Face.BUCCAL ? 1 : -1;
    knots.add(crown.tooth().at(0.5 * m, 0));
    knots.add(crown.tooth().at(0.74 * m, 0.1 * b));
    knots.add(crown.at(sweep.degrees(22), -0.35));
    knots.addAll(arm);
    return Path.smooth(knots);
  }

  /** From a strut in the embrasure beside the crown, and on along an arm. */
  Path fromStrut(List<Point> arm) {
    List<Point> knots = new ArrayList<>();
    knots.add(crown.at(sweep.degrees(Math.max(4, begins() - 22)), 1.1));
    knots.addAll(arm);
    return Path.smooth(knots);
  }
}
