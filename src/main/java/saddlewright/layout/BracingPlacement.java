package saddlewright.layout;

import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.geometry.Path;
import saddlewright.geometry.Region;

/** Lays out what braces a tooth: reciprocal arms, guide plates and the planes they slide on. */
final class BracingPlacement {
  private static final double ARM_WIDTH = 1.25;
  private static final double PLATE_WIDTH = 0.95;
  /** Degrees beyond the middle of the face that a reciprocal arm reaches. */
  private static final double PAST_MIDDLE = 36;
  private static final double SHOULDER = 9;
  /** Share of the buccolingual depth that a guide plate covers (a third to a half; T25; read). */
  private static final double PLATE_SHARE = 0.5;

  private BracingPlacement() {}

  static Laid arm(ReciprocalArm arm, PlacedTooth tooth) {
    double up = OcclusalArm.risesAlong(arm.face(), arm.origin()) ? 1 : -1;
    double from = OcclusalArm.contactDegrees(arm.origin(), arm.face()) + up * SHOULDER;
    double to = PlacedTooth.degrees(arm.face()) + up * PAST_MIDDLE;
    Path centre = tooth.rim(from, to, OcclusalArm.OFFSET);
    return Laid.of(arm, Substance.CAST_METAL, Region.band(centre, ARM_WIDTH))
        .withCentreline(centre)
        .with(Measure.PLAN_LENGTH, centre.length())
        .with(Measure.ARM_LENGTH, centre.length())
        .with(Measure.WIDTH, ARM_WIDTH)
        .with(Measure.ENCIRCLEMENT_DEGREES, Math.abs(to - from));
  }

  static Laid plate(GuidePlate plate, PlacedTooth tooth) {
    double half = halfAngle(tooth);
    double mid = PlacedTooth.degrees(plate.end());
    Path centre = tooth.rim(mid - half, mid + half, 0.3);
    return Laid.of(
            plate, Substance.CAST_METAL, centre.ribbon(PLATE_WIDTH, PLATE_WIDTH).toRegion())
        .withCentreline(centre)
        .with(Measure.WIDTH, PLATE_WIDTH)
        .with(Measure.LENGTH, centre.length());
  }

  static Laid plane(GuidePlane plane, PlacedTooth tooth) {
    double mid =
        switch (plane.surface()) {
          case MESIAL -> 0;
          case DISTAL -> 180;
          case LINGUAL -> 270;
        };
    double half = plane.surface() == GuidePlane.Surface.LINGUAL ? 28 : halfAngle(tooth);
    return Laid.of(plane, Substance.NONE, Region.EMPTY)
        .withDetails(
            List.of(
                tooth.rim(mid - half, mid + half, -0.45),
                tooth.rim(mid - half, mid + half, -0.05)));
  }

  private static double halfAngle(PlacedTooth tooth) {
    return Math.min(
        50, Math.toDegrees(Math.atan2(PLATE_SHARE * tooth.halfDepth(), tooth.halfWidth())) + 4);
  }
}
