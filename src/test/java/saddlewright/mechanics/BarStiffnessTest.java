package saddlewright.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

class BarStiffnessTest {
  /** Values of a three-dimensional frame of finite elements for the same bars, E 220 GPa. */
  @ParameterizedTest
  @CsvSource({
    "4.0, 2.0, 18,  0, 12.4442",
    "4.0, 2.0, 18, 20,  3.8216",
    "4.5, 2.0, 18, 20,  4.5602",
    "5.0, 2.5, 18,  0, 30.3815",
    "5.0, 2.5, 18, 20,  9.3302",
    "4.0, 1.5, 18, 20,  1.8306"
  })
  void agreesWithAFrameOfFiniteElements(
      double height, double thickness, double radius, double leg, double newtons) {
    assertThat(new BarStiffness(height, thickness, radius, leg).newtonsPerMillimetre())
        .isCloseTo(newtons, within(newtons / 200));
  }

  /** A half-pear of 4 by 2 mm: A 6.042 mm², Iₚ 5.999 + 1.632; A⁴ / (4 π² Iₚ) = 4.424 mm⁴. */
  @Test
  void theTorsionConstantIsSaintVenants() {
    assertThat(new BarStiffness(4, 2, 18, 0).torsion()).isCloseTo(4.424, within(0.02));
  }

  /** A half circle of 18 mm between legs of 20 mm is 96.5 mm long and 36 mm across. */
  @Test
  void theShapeIsReadOffTheCentreline() {
    Path u =
        Path.of(new Point(-18, 20), new Point(-18, 0))
            .then(Path.cubic(p(-18, 0), p(-18, -23.9), p(18, -23.9), p(18, 0)))
            .then(Path.of(new Point(18, 0), new Point(18, 20)));
    BarStiffness bar = BarStiffness.of(u, 4);
    assertThat(bar.radius()).isCloseTo(18, within(0.01));
    assertThat(bar.leg()).isCloseTo(20, within(0.5));
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
