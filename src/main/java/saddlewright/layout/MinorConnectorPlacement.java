package saddlewright.layout;

import java.util.Comparator;
import saddlewright.design.MinorConnector;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * Lays out minor connectors: from the major connector, or else the nearest saddle, to the tooth.
 */
final class MinorConnectorPlacement {
  /** Crossings closer than this are one strut, not two with a window between, mm. */
  private static final double SAME_STRUT = 1.5;

  /** Width where it crosses the margin, mm. */
  private static final double WIDTH_AT_MARGIN = 2.1;

  private final Ground ground;

  MinorConnectorPlacement(Ground ground) {
    this.ground = ground;
  }

  Laid lay(MinorConnector connector) {
    Strut strut = Strut.to(ground, target(connector), connector.tooth(), connector.place());
    Laid laid =
        Laid.of(connector, Substance.CAST_METAL, strut.body())
            .withCentreline(strut.path())
            .with(Measure.LENGTH, strut.path().length())
            .with(Measure.WIDTH, Strut.WIDTH_AT_TOOTH);
    if (strut.degrees().isPresent()) {
      laid = laid.with(Measure.CROSSING_DEGREES, strut.degrees().getAsDouble());
    }
    double spacing = spacing(connector);
    return Double.isInfinite(spacing) ? laid : laid.with(Measure.SPACING, spacing);
  }

  private Region target(MinorConnector connector) {
    if (ground.connector().isPresent()) {
      return ground.connector().get().body();
    }
    Point from = ground.tooth(connector.tooth()).centre();
    return ground.saddles().stream()
        .map(Laid::body)
        .min(Comparator.comparingDouble(b -> b.distanceTo(from)))
        .orElse(Region.EMPTY);
  }

  /** The clear window to the nearest other minor connector at the level of the margin, mm. */
  private double spacing(MinorConnector connector) {
    Point own = Strut.crossing(ground, connector.tooth(), connector.place());
    return ground.design().stream(MinorConnector.class)
        .filter(o -> !o.id().equals(connector.id()))
        .mapToDouble(o -> Strut.crossing(ground, o.tooth(), o.place()).distanceTo(own))
        .filter(d -> d > SAME_STRUT)
        .map(d -> Math.max(0, d - WIDTH_AT_MARGIN))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
