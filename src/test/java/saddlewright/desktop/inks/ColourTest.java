package saddlewright.desktop.inks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTest {

  /**
   * Black on white is 21:1 by the definition in WCAG 2.2. That #767676 on white is 4.54:1 and just
   * passes, #777777 is 4.48:1 and just fails, and #595959 is 7.0:1 is what guides to WCAG print
   * (toolkitpropp.netlify.app, auditbuffet.com AB-000065); the other values are from memory of the
   * usual contrast checkers.
   */
  @ParameterizedTest
  @CsvSource({
    "#000000, 21.00",
    "#ffffff, 1.00",
    "#767676, 4.54",
    "#777777, 4.48",
    "#949494, 3.03",
    "#595959, 7.00",
    "#ff0000, 4.00",
    "#0000ff, 8.59"
  })
  void contrast_with_white_is_what_is_published(String hex, double ratio) {
    assertThat(Colour.of(hex).contrast(Colour.WHITE)).isCloseTo(ratio, within(0.005));
    assertThat(Colour.WHITE.contrast(Colour.of(hex))).isCloseTo(ratio, within(0.005));
  }

  /**
   * CIE L*a*b* of sRGB primaries under D65: red 53.24, 80.09, 67.20; blue 32.30, 79.19, -107.86.
   */
  @ParameterizedTest
  @CsvSource({"#ff0000, 53.24, 80.09, 67.20", "#0000ff, 32.30, 79.19, -107.86"})
  void lab_of_the_primaries_is_what_is_published(String hex, double l, double a, double b) {
    assertThat(ColourVision.lab(Colour.of(hex)))
        .containsExactly(new double[] {l, a, b}, within(0.1));
  }

  /**
   * The matrices of Viénot, Brettel and Mollon (1999), from light to cones and back, with the
   * missing cone replaced as they say: their RGB to LMS in Smith and Pokorny's cones, L of a
   * protanope 2.02344 M - 2.52581 S, M of a deuteranope 0.494207 L + 1.24827 S.
   */
  @ParameterizedTest
  @CsvSource({"#c03020", "#208040", "#3050c0", "#d0a020", "#808080", "#ffffff"})
  void what_is_seen_agrees_with_the_published_matrices(String hex) {
    Colour c = Colour.of(hex);
    double[] lms =
        times(
            RGB_TO_LMS, Colour.linear(c.red()), Colour.linear(c.green()), Colour.linear(c.blue()));
    double[] protan = {2.02344 * lms[1] - 2.52581 * lms[2], lms[1], lms[2]};
    double[] deutan = {lms[0], 0.494207 * lms[0] + 1.24827 * lms[2], lms[2]};
    expect(ColourVision.PROTANOPIA.seen(c), protan);
    expect(ColourVision.DEUTERANOPIA.seen(c), deutan);
  }

  private static final double[][] RGB_TO_LMS = {
    {17.8824, 43.5161, 4.11935}, {3.45565, 27.1554, 3.86714}, {0.0299566, 0.184309, 1.46709}
  };
  private static final double[][] LMS_TO_RGB = {
    {0.080944447900, -0.13050440900, 0.116721066},
    {-0.010248533515, 0.054019326636, -0.113614708},
    {-0.000365296938, -0.004121614686, 0.693511405}
  };

  private static void expect(Colour seen, double[] lms) {
    double[] rgb = times(LMS_TO_RGB, lms[0], lms[1], lms[2]);
    assertThat(seen.red()).isCloseTo(Colour.part(rgb[0]), within(2));
    assertThat(seen.green()).isCloseTo(Colour.part(rgb[1]), within(2));
    assertThat(seen.blue()).isCloseTo(Colour.part(rgb[2]), within(2));
  }

  private static double[] times(double[][] m, double a, double b, double c) {
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = m[i][0] * a + m[i][1] * b + m[i][2] * c;
    }
    return out;
  }

  @Test
  void only_six_digits_after_a_hash_are_a_colour() {
    assertThat(Colour.parse(" #0A5b9f ")).contains(new Colour(10, 91, 159));
    assertThat(Colour.parse("#fff")).isEmpty();
    assertThat(Colour.parse("red")).isEmpty();
    assertThat(Colour.parse("#gg0000")).isEmpty();
  }
}
