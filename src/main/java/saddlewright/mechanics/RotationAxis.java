package saddlewright.mechanics;

import saddlewright.geometry.Point;

/**
 * A line in the occlusal plane about which a denture may turn, through two of its bearings.
 *
 * @param from one bearing, in the frame of the arch
 * @param to the other
 */
public record RotationAxis(Point from, Point to) {
  public RotationAxis {
    if (from.distanceTo(to) < 1e-9) {
      throw new IllegalArgumentException("an axis needs two different points");
    }
  }

  /**
   * Signed distance of a point from the line in mm: d(P) = e · (P − A) turned a quarter, with e the
   * unit vector of the axis; the sign tells the side.
   */
  public double distanceTo(Point p) {
    return from.to(to).unit().cross(from.to(p));
  }

  /** Distance in mm on the side that lies away from the load; negative on the load's own side. */
  public double beyond(Point p, Point load) {
    return -Math.signum(distanceTo(load)) * distanceTo(p);
  }
}
