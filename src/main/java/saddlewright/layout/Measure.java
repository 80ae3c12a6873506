package saddlewright.layout;

/** A quantity read off the laid-out component, in millimetres unless its name says otherwise. */
public enum Measure {
  /** Length of an arm along its centreline, with the stated vertical allowance. */
  ARM_LENGTH,
  /** Length of the same centreline in plan. */
  PLAN_LENGTH,
  /** Smallest distance from a gingival margin that the part should keep clear of. */
  MARGIN_CLEARANCE,
  /** Height of a bar, or front-to-back width of a strap or limb. */
  HEIGHT,
  /** Front-to-back size of the opening of a ring. */
  OPENING,
  /** Mesiodistal or along-the-arch length. */
  LENGTH,
  /** Width across. */
  WIDTH,
  /** Angle in degrees by which the part surrounds its tooth. */
  ENCIRCLEMENT_DEGREES,
  /** Depth of the charted undercut at the tip. */
  UNDERCUT,
  /** Way of a retentive tip along the path of insertion, from the bulge to its seat. */
  TRAVEL,
  /** Distance to the nearest other minor connector. */
  SPACING,
  /** Angle in degrees between the part and the gingival margin that it crosses. */
  CROSSING_DEGREES,
  /** Area in square millimetres. */
  AREA_MM2
}
