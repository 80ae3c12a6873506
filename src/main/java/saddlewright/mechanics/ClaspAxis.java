package saddlewright.mechanics;

import java.util.List;
import java.util.Optional;
import saddlewright.geometry.Point;

/**
 * The line through the retentive tips about which a saddle lifts.
 *
 * <p>With more than two clasps it is the edge of the convex hull of the tips that the load pulls at
 * with the longest lever: the tips behind that edge cannot stop the saddle from turning about it. A
 * load inside the hull is held on all sides and has no axis.
 *
 * <p>Source: British teaching places indirect retainers on the opposite side of the clasp axis from
 * the saddle (Davenport et al., Br Dent J 2001;190, indirect retention, read); the choice among
 * several edges is derived from statics.
 */
public final class ClaspAxis {
  private ClaspAxis() {}

  /**
   * The axis for a load.
   *
   * @param tips retentive tips in the frame of the arch
   * @param loads points of the saddle that may be pulled away from the ridge
   * @return empty with fewer than two tips, or when every load lies inside the hull
   */
  public static Optional<RotationAxis> of(List<Point> tips, List<Point> loads) {
    RotationAxis worst = null;
    double longest = 1e-6;
    for (int i = 0; i < tips.size(); i++) {
      for (int j = i + 1; j < tips.size(); j++) {
        if (tips.get(i).distanceTo(tips.get(j)) < 1e-6) {
          continue;
        }
        RotationAxis axis = new RotationAxis(tips.get(i), tips.get(j));
        for (Point load : loads) {
          double lever = Math.abs(axis.distanceTo(load));
          if (lever > longest && isEdgeFacing(axis, tips, load)) {
            longest = lever;
            worst = axis;
          }
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Whether no tip lies on the load's side of the line. */
  private static boolean isEdgeFacing(RotationAxis axis, List<Point> tips, Point load) {
    return tips.stream().allMatch(t -> axis.beyond(t, load) >= -1e-6);
  }
}
