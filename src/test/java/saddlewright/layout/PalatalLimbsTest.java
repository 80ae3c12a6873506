package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;

/** What is read off a connector is what its designer set. */
class PalatalLimbsTest {
  private static final ArchChart CHART = Mouths.missing(Arch.UPPER, 16, 17, 26, 27);

  private static PalatalLimbs limbs(ArchChart chart, ConnectorForm form, ConnectorShape shape) {
    MajorConnector major =
        new MajorConnector(
            ComponentId.of("major"), form, Span.of(Tooth.of(17), Tooth.of(27)), shape);
    return Mouths.laid(chart, Mouths.saddles(chart).plus(major)).palatalLimbs().orElseThrow();
  }

  /** Borders at 14 and 46 mm, opening from 22 to 37 mm: straps of 8 and 9 mm, opening 15 mm. */
  @Test
  void theStrapsOfARingAreReadOnTheMidline() {
    ConnectorShape shape =
        ConnectorShape.DEFAULT
            .withBorders(Optional.of(14.0), Optional.of(46.0))
            .withOpening(Optional.of(22.0), Optional.of(37.0));
    PalatalLimbs ring = limbs(CHART, ConnectorForm.PALATAL_RING, shape);
    assertThat(ring.frontBorder()).isCloseTo(14, within(0.2));
    assertThat(ring.anterior()).isCloseTo(8, within(0.3));
    assertThat(ring.opening().orElseThrow()).isCloseTo(15, within(0.3));
    assertThat(ring.posterior().orElseThrow()).isCloseTo(9, within(0.3));
    assertThat(ring.lateral()).isPresent();
  }

  @Test
  void aPlateHasNoOpening() {
    PalatalLimbs plate = limbs(CHART, ConnectorForm.PALATAL_PLATE, ConnectorShape.DEFAULT);
    assertThat(plate.opening()).isEmpty();
    assertThat(plate.lateral()).isEmpty();
  }

  /** A border at 44 mm in front of a junction charted at 50 mm. */
  @Test
  void theRearBorderIsMeasuredToTheChartedSoftPalate() {
    ArchChart chart = CHART.with(CHART.softTissues().withPalateLimit(Optional.of(50.0)));
    ConnectorShape shape = ConnectorShape.DEFAULT.withBorders(Optional.empty(), Optional.of(44.0));
    assertThat(limbs(chart, ConnectorForm.PALATAL_PLATE, shape).beforeSoftPalate())
        .isCloseTo(6, within(0.2));
  }

  @Test
  void aSymmetricalBorderIsSquareToTheMidline() {
    assertThat(limbs(CHART, ConnectorForm.PALATAL_STRAP, ConnectorShape.DEFAULT).skewDegrees())
        .isLessThan(1);
  }

  /** The rugae lie in the front third: a plate from 6 mm on covers them, a rear strap none. */
  @Test
  void rugaeAreCoveredByMetalInFrontOnly() {
    ConnectorShape front = ConnectorShape.DEFAULT.withBorders(Optional.of(6.0), Optional.empty());
    assertThat(limbs(CHART, ConnectorForm.PALATAL_PLATE, front).rugae()).isGreaterThan(0.4);
    assertThat(limbs(CHART, ConnectorForm.PALATAL_STRAP, ConnectorShape.DEFAULT).rugae())
        .isEqualTo(0);
  }
}
