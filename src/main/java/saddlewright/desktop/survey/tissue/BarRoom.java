package saddlewright.desktop.survey.tissue;

import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;

/**
 * What a depth of the lingual sulcus leaves for a bar, by the limits of a school, millimetres.
 *
 * @param depth from the gingival margin to the raised floor of the mouth
 * @param border a bar keeps this clear of the margin
 * @param bar height of a bar
 * @param floor a bar keeps this clear of the floor
 * @param lingual depth that a lingual bar asks for
 * @param lingualLeast depth below which there is none
 * @param sublingual depth that a sublingual bar asks for
 */
record BarRoom(
    double depth,
    double border,
    double bar,
    double floor,
    double lingual,
    double lingualLeast,
    double sublingual) {

  /** What can lie in the sulcus. */
  enum Kind {
    LINGUAL_BAR,
    LINGUAL_BAR_JUST,
    SUBLINGUAL_BAR,
    PLATE
  }

  static BarRoom of(double depth, Profile school) {
    return new BarRoom(
        depth,
        school.limit(Quantity.LOWER_BORDER),
        school.limit(Quantity.BAR_HEIGHT),
        school.limit(Quantity.FLOOR_CLEARANCE),
        school.limit(Quantity.LINGUAL_BAR_DEPTH),
        school.limit(Quantity.LINGUAL_BAR_DEPTH_LEAST),
        school.limit(Quantity.SUBLINGUAL_BAR_DEPTH));
  }

  /** Height that is left for a bar between both clearances; never less than nothing. */
  double left() {
    return Math.max(0, depth - border - floor);
  }

  boolean takesBar() {
    return left() >= bar - 1e-9;
  }

  Kind kind() {
    if (depth >= lingual) {
      return Kind.LINGUAL_BAR;
    }
    if (depth >= lingualLeast) {
      return Kind.LINGUAL_BAR_JUST;
    }
    return depth >= sublingual ? Kind.SUBLINGUAL_BAR : Kind.PLATE;
  }
}
