package saddlewright.layout;

import java.util.List;
import saddlewright.design.ReciprocalArm;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Lays out reciprocal arms: even in width, from the origin to past the middle of their face. */
final class BracingArm {
  /** Width in plan, mm: as thick as the root of a retentive arm, but not tapered. */
  static final double WIDTH = 1.2;

  /**
   * Sweep at its end, degrees: with a retentive arm past 135 it encloses more than 180 (common
   * practice).
   */
  static final double END = 128;

  private static final double OFFSET = 0.55;

  private final Ground ground;
  private final ReciprocalArm arm;

  BracingArm(Ground ground, ReciprocalArm arm) {
    this.ground = ground;
    this.arm = arm;
  }

  Laid lay() {
    CrownContour crown = CrownContour.of(ground.tooth(arm.tooth()));
    Sweep sweep = new Sweep(arm.origin(), arm.face());
    Shoulder shoulder = Shoulder.of(ground, crown, sweep);
    List<Point> knots =
        crown.knots(sweep.degrees(shoulder.begins()), sweep.degrees(END), OFFSET, OFFSET);
    Path line = Path.smooth(knots);
    double plan = line.length();
    return Laid.of(arm, Substance.CAST_METAL, ArmShape.along(shoulder.into(knots), WIDTH, WIDTH))
        .withCentreline(line)
        .with(Measure.PLAN_LENGTH, plan)
        .with(Measure.ARM_LENGTH, new ArmHeight(ground, arm.tooth()).bracing(plan))
        .with(Measure.ENCIRCLEMENT_DEGREES, END)
        .with(Measure.WIDTH, WIDTH);
  }
}
