package saddlewright.layout;

import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.geometry.Path;
import saddlewright.geometry.Region;

/** Lays out guide plates and the guide planes that they slide along. */
final class GuidePlacement {
  /** Thickness of a guide plate, mm (0.8–1; from memory). */
  static final double THICKNESS = 0.9;

  /** Width as a share of the buccolingual depth: a third to a half in published teaching. */
  static final double SHARE = 0.45;

  /** Share of the height of the crown that a plane takes: a third to a half. */
  static final double HEIGHT_SHARE = 0.4;

  private final Ground ground;

  GuidePlacement(Ground ground) {
    this.ground = ground;
  }

  Laid plate(GuidePlate plate) {
    CrownContour crown = CrownContour.of(ground.tooth(plate.tooth()));
    Path line = surface(crown, PlacedTooth.degrees(plate.end()), THICKNESS / 2 - 0.05);
    return Laid.of(plate, Substance.CAST_METAL, ArmShape.along(line, THICKNESS, THICKNESS))
        .withCentreline(line)
        .with(Measure.WIDTH, line.length() + THICKNESS)
        .with(Measure.HEIGHT, HEIGHT_SHARE * new ArmHeight(ground, plate.tooth()).crown());
  }

  Laid plane(GuidePlane plane) {
    CrownContour crown = CrownContour.of(ground.tooth(plane.tooth()));
    double middle =
        switch (plane.surface()) {
          case MESIAL -> 0;
          case DISTAL -> 180;
          case LINGUAL -> 270;
        };
    Path outer = surface(crown, middle, -0.28);
    Path inner = surface(crown, middle, -0.62);
    return Laid.of(plane, Substance.NONE, Region.EMPTY)
        .withCentreline(outer)
        .withDetails(List.of(outer, inner))
        .with(Measure.WIDTH, outer.length())
        .with(Measure.HEIGHT, HEIGHT_SHARE * new ArmHeight(ground, plane.tooth()).crown());
  }

  /** A line along the middle of a surface, half on each side of a direction of the frame. */
  private static Path surface(CrownContour crown, double middle, double offset) {
    double half = Math.max(0.4, SHARE * crown.tooth().halfDepth() - 0.3);
    return crown.path(crown.walked(middle, -half), crown.walked(middle, half), offset);
  }
}
