package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

class UpperConnectorTest {
  private static final ComponentId MAJOR = ComponentId.of("major");
  private static final Path MIDLINE = Path.of(new Point(0, -5), new Point(0, 90));

  @Provide
  Arbitrary<ArchChart> upper() {
    return Mouths.any(Arch.UPPER);
  }

  /** 6 mm: US teaching; the border is measured where it passes standing teeth. */
  @Property(tries = 60)
  void aPlateKeepsSixMillimetresFromTheMarginsThatItPasses(@ForAll("upper") ArchChart chart) {
    Laid plate =
        Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.PALATAL_PLATE))
            .find(MAJOR)
            .orElseThrow();
    plate
        .measure(Measure.MARGIN_CLEARANCE)
        .ifPresent(mm -> assertThat(mm).isGreaterThanOrEqualTo(6 - 0.01));
  }

  /** No clearance is unwise and lawful; it once left the border without a length to turn in. */
  @Property(tries = 60)
  void aConnectorWithoutAnyClearanceIsLaid(@ForAll("upper") ArchChart chart) {
    ArchDesign design =
        Mouths.saddles(chart)
            .plus(
                new MajorConnector(
                    MAJOR,
                    ConnectorForm.PALATAL_PLATE,
                    Span.of(Tooth.of(18), Tooth.of(28)),
                    ConnectorShape.DEFAULT.withClearance(Optional.of(0.0))));
    assertThat(Mouths.laid(chart, design).find(MAJOR)).isPresent();
  }

  @Test
  void aStrapIsAtLeastEightMillimetresWide() {
    Laid strap = laid(ConnectorForm.PALATAL_STRAP, ConnectorShape.DEFAULT);
    assertThat(strap.measure(Measure.HEIGHT).getAsDouble()).isBetween(8.0, 15.1);
  }

  @Test
  void aBarIsNarrowerThanAStrap() {
    Laid bar = laid(ConnectorForm.PALATAL_BAR, ConnectorShape.DEFAULT);
    assertThat(bar.measure(Measure.HEIGHT).getAsDouble()).isLessThan(8);
  }

  /** 15 mm opening, front limb 6–8 mm and rear limb 8–10 mm: US examination boards. */
  @Test
  void aRingHasLimbsAndAnOpeningOfTheTaughtSizes() {
    Laid ring = laid(ConnectorForm.PALATAL_RING, ConnectorShape.DEFAULT);
    List<Path> limbs = ring.body().inside(MIDLINE);
    assertThat(limbs).hasSize(2);
    assertThat(limbs.get(0).length()).isBetween(6.0, 8.5);
    assertThat(limbs.get(1).length()).isBetween(7.5, 10.5);
    assertThat(ring.measure(Measure.OPENING).getAsDouble()).isGreaterThanOrEqualTo(15);
    assertThat(ring.body().holes()).hasSize(1);
  }

  @Test
  void aHorseshoeIsOpenBehind() {
    Laid shoe = laid(ConnectorForm.HORSESHOE, ConnectorShape.DEFAULT);
    assertThat(shoe.body().holes()).isEmpty();
    assertThat(shoe.body().inside(MIDLINE)).hasSize(1);
    assertThat(shoe.measure(Measure.HEIGHT).getAsDouble()).isBetween(6.0, 9.0);
  }

  @ParameterizedTest
  @EnumSource(
      value = ConnectorForm.class,
      names = {"PALATAL_STRAP", "PALATAL_PLATE", "PALATAL_BAR", "PALATAL_RING"})
  void bordersCrossTheMidlineAtARightAngle(ConnectorForm form) {
    for (Path border : laid(form, ConnectorShape.DEFAULT).details()) {
      Vector t = border.tangentAt(border.arcNearest(new Point(0, border.at(0).y())));
      double arc = border.arcNearest(nearestOnMidline(border));
      t = border.tangentAt(arc);
      assertThat(Math.abs(t.y())).isLessThan(0.05);
    }
  }

  private static Point nearestOnMidline(Path border) {
    return border.points().stream()
        .min((a, b) -> Double.compare(Math.abs(a.x()), Math.abs(b.x())))
        .orElseThrow();
  }

  @Test
  void bordersSetByHandAreKept() {
    ConnectorShape shape = ConnectorShape.DEFAULT.withBorders(Optional.of(24.0), Optional.of(40.0));
    Laid plate = laid(ConnectorForm.PALATAL_PLATE, shape);
    Path metal = plate.body().inside(MIDLINE).get(0);
    assertThat(metal.start().y()).isCloseTo(24, within(0.1));
    assertThat(metal.end().y()).isCloseTo(40, within(0.1));
  }

  @Test
  void theOpeningSetByHandIsKept() {
    ConnectorShape shape =
        ConnectorShape.DEFAULT
            .withBorders(Optional.of(14.0), Optional.of(46.0))
            .withOpening(Optional.of(22.0), Optional.of(36.0));
    Laid ring = laid(ConnectorForm.PALATAL_RING, shape);
    List<Path> limbs = ring.body().inside(MIDLINE);
    assertThat(limbs.get(0).end().y()).isCloseTo(22, within(0.2));
    assertThat(limbs.get(1).start().y()).isCloseTo(36, within(0.2));
  }

  private static Laid laid(ConnectorForm form, ConnectorShape shape) {
    ArchChart chart = Mouths.missing(Arch.UPPER, 15, 16, 17, 18, 25, 26, 27, 28);
    ArchDesign design = Mouths.saddles(chart);
    Span span = ConnectorChoice.span(form, chart, design);
    return Mouths.laid(chart, design.plus(new MajorConnector(MAJOR, form, span, shape)))
        .find(MAJOR)
        .orElseThrow();
  }
}
