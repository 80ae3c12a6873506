package saddlewright.mechanics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.geometry.Point;
import saddlewright.layout.Layout;

/**
 * How far the rests of a denture lie beyond the axis about which one saddle lifts.
 *
 * <p>Assumptions: a rigid framework seen from above; the load pulls straight up at the artificial
 * tooth farthest from the axis; distances are perpendicular to the axis in the occlusal plane.
 *
 * @param axis the line
 * @param load the artificial tooth that is farthest from it
 * @param rests every rest with its distance
 */
public record IndirectRetention(RotationAxis axis, Point load, List<Reach> rests) {

  /** A rest and its distance in mm beyond the axis; negative on the saddle's side. */
  public record Reach(Rest rest, double distance) {}

  public IndirectRetention {
    rests = List.copyOf(rests);
  }

  /** By the clasp axis; empty with fewer than two clasps or a saddle that they enclose. */
  public static Optional<IndirectRetention> aboutClasps(Layout layout, Saddle saddle) {
    List<Point> tips =
        layout.design().stream(Clasp.class).map(c -> Bearings.tip(layout, c)).toList();
    List<Point> loads = loads(layout, saddle);
    return ClaspAxis.of(tips, loads).map(axis -> about(axis, loads, layout));
  }

  /** By the support axis, without the declared indirect retainers; empty if it cannot be drawn. */
  public static Optional<IndirectRetention> aboutRests(Layout layout, Saddle saddle) {
    List<Point> seats =
        layout.design().stream(Rest.class)
            .filter(r -> !r.indirectRetainer())
            .map(r -> Bearings.seat(layout, r))
            .toList();
    List<Point> loads = loads(layout, saddle);
    return SupportAxis.of(seats).map(axis -> about(axis, loads, layout));
  }

  private static IndirectRetention about(RotationAxis axis, List<Point> loads, Layout layout) {
    Point load =
        loads.stream()
            .max(Comparator.comparingDouble(p -> Math.abs(axis.distanceTo(p))))
            .orElseThrow();
    List<Reach> reaches =
        layout.design().stream(Rest.class)
            .map(r -> new Reach(r, axis.beyond(Bearings.seat(layout, r), load)))
            .toList();
    return new IndirectRetention(axis, load, reaches);
  }

  private static List<Point> loads(Layout layout, Saddle saddle) {
    return saddle.span().teeth().stream().map(t -> Bearings.artificialTooth(layout, t)).toList();
  }

  /** Lever of the load in mm. */
  public double loadDistance() {
    return Math.abs(axis.distanceTo(load));
  }

  /** Distance in mm of a rest beyond the axis. */
  public double reach(Rest rest) {
    return rests.stream()
        .filter(r -> r.rest().id().equals(rest.id()))
        .mapToDouble(Reach::distance)
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no rest \"" + rest.id() + "\" in the design"));
  }

  /** Distance in mm beyond the axis at which a seat would lie. */
  public double reach(Point seat) {
    return axis.beyond(seat, load);
  }

  /**
   * Lever of a rest as a share of the lever of the load; 1 halves the force that clasps must hold.
   */
  public double leverRatio(Rest rest) {
    return reach(rest) / loadDistance();
  }
}
