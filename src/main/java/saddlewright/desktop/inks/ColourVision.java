package saddlewright.desktop.inks;

/**
 * How colours look to people who lack one sort of cone: Viénot, Brettel and Mollon, "Digital video
 * colourmaps for checking the legibility of displays by dichromats", Color Research and Application
 * 24 (1999) 243-252. Both see red and green alike and keep blue and light.
 */
public enum ColourVision {
  /** Without the cones for long waves. */
  PROTANOPIA(0.11238, 0.88762, 0.00401),
  /** Without the cones for middle waves. */
  DEUTERANOPIA(0.29275, 0.70725, -0.02234);

  private final double red;
  private final double green;
  private final double blueOfRed;

  /**
   * The published cone matrices, multiplied out: red and green both become this mixture of them,
   * and blue gains a little of one and loses as much of the other.
   */
  ColourVision(double red, double green, double blueOfRed) {
    this.red = red;
    this.green = green;
    this.blueOfRed = blueOfRed;
  }

  /** The colour as it is seen. */
  Colour seen(Colour c) {
    double r = Colour.linear(c.red());
    double g = Colour.linear(c.green());
    double b = Colour.linear(c.blue());
    int yellow = Colour.part(red * r + green * g);
    return new Colour(yellow, yellow, Colour.part(b + blueOfRed * (r - g)));
  }

  /**
   * How far apart two colours look: the distance in CIE 1976 L*a*b* under daylight D65. About 2 is
   * the least that is noticed side by side.
   */
  static double difference(Colour one, Colour other) {
    double[] a = lab(one);
    double[] b = lab(other);
    return Math.sqrt(sq(a[0] - b[0]) + sq(a[1] - b[1]) + sq(a[2] - b[2]));
  }

  private static double sq(double v) {
    return v * v;
  }

  /** By the sRGB primaries of IEC 61966-2-1 and the formulas of ISO/CIE 11664-4. */
  static double[] lab(Colour c) {
    double r = Colour.linear(c.red());
    double g = Colour.linear(c.green());
    double b = Colour.linear(c.blue());
    double x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047);
    double y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
    double z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double f(double t) {
    double d = 6.0 / 29;
    return t > d * d * d ? Math.cbrt(t) : t / (3 * d * d) + 4.0 / 29;
  }
}
