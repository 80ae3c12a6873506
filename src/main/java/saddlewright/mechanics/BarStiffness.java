package saddlewright.mechanics;

import saddlewright.geometry.Path;

/**
 * How far a lower bar gives when one of its ends is pressed down and the other held.
 *
 * <p>The bar is a half-pear in section and a U in plan: a half circle with two straight legs, with
 * the length and the span of its centreline. Nearly all of the give is twist. The formula was
 * derived from beam theory and checked against a frame of finite elements; figures are model
 * estimates, good for comparing one bar with another.
 *
 * @param height of the section in mm
 * @param thickness of the section in mm
 * @param radius of the half circle in mm
 * @param leg length of each leg in mm
 */
public record BarStiffness(double height, double thickness, double radius, double leg) {
  /** Young's modulus of cast cobalt-chromium, MPa (middle of the published range). */
  public static final double COBALT_CHROMIUM_MPA = 220_000;

  private static final double POISSON = 0.3;

  /** Usual thickness of a lingual bar: 2 mm (British and North American teaching notes). */
  public static final double USUAL_THICKNESS = 2;

  // Shares of the enclosing rectangle for the half-pear: thickest at 0.35 of its height.
  private static final double AREA = 0.75525;
  private static final double UPRIGHT = 0.046866;
  private static final double FLAT = 0.050991;

  /** The bar along a centreline, with the usual thickness. */
  public static BarStiffness of(Path centreline, double height) {
    double radius = Math.max(1, centreline.start().distanceTo(centreline.end()) / 2);
    double leg = Math.max(0, (centreline.length() - Math.PI * radius) / 2);
    return new BarStiffness(height, USUAL_THICKNESS, radius, leg);
  }

  /** Torsion constant in mm⁴, after Saint-Venant: A⁴ / (4 π² Iₚ). */
  public double torsion() {
    double area = AREA * height * thickness;
    double polar =
        UPRIGHT * Math.pow(height, 3) * thickness + FLAT * height * Math.pow(thickness, 3);
    return Math.pow(area, 4) / (4 * Math.PI * Math.PI * polar);
  }

  /** Newtons on one end for each millimetre that it sinks while the other end is held. */
  public double newtonsPerMillimetre() {
    double r = radius;
    double a = leg;
    double bending =
        (2 * Math.pow(a, 3) / 3 + Math.PI * r * (a * a + r * r) / 2)
            / (COBALT_CHROMIUM_MPA * UPRIGHT * Math.pow(height, 3) * thickness);
    double twist =
        (Math.PI * r * a * a / 2 + 8 * a * r * r + 3 * Math.PI * Math.pow(r, 3) / 2)
            / (COBALT_CHROMIUM_MPA / (2 * (1 + POISSON)) * torsion());
    return 1 / (bending + twist);
  }
}
