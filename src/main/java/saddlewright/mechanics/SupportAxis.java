package saddlewright.mechanics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.geometry.Point;

/**
 * The line through the most distal rests of the two sides, about which a free-end saddle sinks.
 *
 * <p>Source: North American teaching (fulcrum line; University of Oklahoma review questions, read).
 */
public final class SupportAxis {
  private SupportAxis() {}

  /**
   * The axis of a set of rests.
   *
   * @param seats seats of the primary rests; indirect retainers are left out by the caller
   * @return empty unless both sides of the arch bear a rest
   */
  public static Optional<RotationAxis> of(List<Point> seats) {
    Comparator<Point> backwards = Comparator.comparingDouble(Point::y);
    Optional<Point> right = seats.stream().filter(p -> p.x() < 0).max(backwards);
    Optional<Point> left = seats.stream().filter(p -> p.x() >= 0).max(backwards);
    return right.isPresent() && left.isPresent()
        ? Optional.of(new RotationAxis(right.get(), left.get()))
        : Optional.empty();
  }
}
