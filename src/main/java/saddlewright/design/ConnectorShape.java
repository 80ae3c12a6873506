package saddlewright.design;

import java.util.Optional;

/**
 * Sizes of a major connector that the designer has set by hand; what is empty takes the lawful
 * default. All in millimetres.
 *
 * @param clearance from gingival margins to the nearest border
 * @param height of a bar, or width of a limb or strap front to back
 * @param anteriorBorder where the front border crosses the midline, from the incisal midpoint
 *     (upper)
 * @param posteriorBorder where the rear border crosses the midline (upper)
 * @param openingFront where the front of a ring's opening crosses the midline (upper)
 * @param openingBack where the rear of a ring's opening crosses the midline (upper)
 */
public record ConnectorShape(
    Optional<Double> clearance,
    Optional<Double> height,
    Optional<Double> anteriorBorder,
    Optional<Double> posteriorBorder,
    Optional<Double> openingFront,
    Optional<Double> openingBack) {

  public static final ConnectorShape DEFAULT =
      new ConnectorShape(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  public ConnectorShape {
    refuse("clearance", clearance, 0, 20);
    refuse("height", height, 0.5, 40);
    refuse("anterior border", anteriorBorder, 0, 80);
    refuse("posterior border", posteriorBorder, 0, 80);
    refuse("front of the opening", openingFront, 0, 80);
    refuse("back of the opening", openingBack, 0, 80);
  }

  public ConnectorShape withClearance(Optional<Double> mm) {
    return new ConnectorShape(
        mm, height, anteriorBorder, posteriorBorder, openingFront, openingBack);
  }

  public ConnectorShape withHeight(Optional<Double> mm) {
    return new ConnectorShape(
        clearance, mm, anteriorBorder, posteriorBorder, openingFront, openingBack);
  }

  public ConnectorShape withBorders(Optional<Double> anterior, Optional<Double> posterior) {
    return new ConnectorShape(clearance, height, anterior, posterior, openingFront, openingBack);
  }

  public ConnectorShape withOpening(Optional<Double> front, Optional<Double> back) {
    return new ConnectorShape(clearance, height, anteriorBorder, posteriorBorder, front, back);
  }

  private static void refuse(String what, Optional<Double> v, double min, double max) {
    v.ifPresent(
        d -> {
          if (!(d >= min && d <= max)) {
            throw new IllegalArgumentException(
                "connector "
                    + what
                    + " is "
                    + d
                    + " mm; it must be a number from "
                    + min
                    + " to "
                    + max);
          }
        });
  }
}
