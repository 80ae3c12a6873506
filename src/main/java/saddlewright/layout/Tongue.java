package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.design.Saddle;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * A short arm of a major connector to a saddle that it would pass by a little.
 *
 * <p>A saddle farther off is left alone: that the connector does not reach it is a fault of the
 * design.
 */
final class Tongue {
  /** Longest tongue, mm (from memory). */
  private static final double LONGEST = 12;

  /** How far it is sunk into the connector, mm. */
  private static final double SUNK = 1.5;

  private Tongue() {}

  /**
   * The body of a connector with a tongue to each near saddle that it does not touch.
   *
   * @param width of the tongues in mm
   * @param face the side of the ridge on which the connector runs
   */
  static Region with(Ground ground, Span span, Region body, double width, Face face) {
    List<Region> parts = new ArrayList<>(List.of(body));
    for (Saddle saddle : PalateField.saddlesBeside(ground, span)) {
      for (Laid laid : ground.saddles()) {
        double gap = laid.component().equals(saddle) ? laid.body().distanceTo(body) : 0;
        if (gap > 0 && gap < LONGEST) {
          Point root = root(ground, saddle, face);
          Point near = body.nearest(root);
          double way = root.distanceTo(near);
          Point sunk = way < 0.1 ? near : root.towards(near, 1 + SUNK / way);
          parts.add(Region.band(Path.of(root, sunk), width));
        }
      }
    }
    return parts.size() == 1 ? body : Region.union(parts);
  }

  private static Point root(Ground ground, Saddle saddle, Face face) {
    double arc = SaddleReach.of(ground, saddle.span()).middle();
    RidgeFrame ridge = ground.ridge();
    return ridge.at(
        arc,
        face == Face.LINGUAL ? 0.6 * ridge.lingualMargin(arc) : -0.6 * ridge.buccalMargin(arc));
  }
}
