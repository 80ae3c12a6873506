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
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.design.Saddle;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

class LowerConnectorTest {
  private static final ComponentId MAJOR = ComponentId.of("major");

  @Provide
  Arbitrary<ArchChart> lower() {
    return Mouths.any(Arch.LOWER);
  }

  /** 3 mm: UK and US teaching alike, e.g. Stewart's clinical removable partial prosthodontics. */
  @Property(tries = 120)
  void aLingualBarKeepsThreeMillimetresFromEveryMarginThatItPasses(
      @ForAll("lower") ArchChart chart) {
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.LINGUAL_BAR));
    Laid bar = layout.find(MAJOR).orElseThrow();
    assertThat(nearestPassed(chart, layout, bar)).isGreaterThanOrEqualTo(3 - 0.01);
  }

  @Property(tries = 60)
  void aSublingualBarLiesLowerThanALingualOneWould(@ForAll("lower") ArchChart chart) {
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.SUBLINGUAL_BAR));
    Laid bar = layout.find(MAJOR).orElseThrow();
    assertThat(nearestPassed(chart, layout, bar)).isGreaterThanOrEqualTo(5 - 0.01);
  }

  @Property(tries = 60)
  void aBarNeverCrossesItselfNorLeavesItsSideTwice(@ForAll("lower") ArchChart chart) {
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.LINGUAL_BAR));
    Laid bar = layout.find(MAJOR).orElseThrow();
    Path line = bar.centreline().orElseThrow();
    int changes = 0;
    List<Point> pts = line.points();
    for (int i = 0; i + 1 < pts.size(); i++) {
      changes += pts.get(i).x() < 0 != pts.get(i + 1).x() < 0 ? 1 : 0;
    }
    assertThat(changes).isLessThanOrEqualTo(1);
    // A band that does not overlap itself has the area of its length times its width, ends added.
    double height = bar.measure(Measure.HEIGHT).getAsDouble();
    double flat = line.length() * height + Math.PI * height * height / 4;
    assertThat(bar.body().area()).isCloseTo(flat, within(0.03 * flat));
  }

  @ParameterizedTest
  @EnumSource(
      value = ConnectorForm.class,
      names = {"LINGUAL_BAR", "SUBLINGUAL_BAR", "CONTINUOUS_BAR", "LABIAL_BAR"})
  void theClearanceAndHeightSetByHandAreKept(ConnectorForm form) {
    ArchChart chart = Mouths.missing(Arch.LOWER, 36, 37, 38, 46, 47, 48);
    ArchDesign design = Mouths.saddles(chart);
    ConnectorShape shape =
        ConnectorShape.DEFAULT.withClearance(Optional.of(4.5)).withHeight(Optional.of(3.5));
    design = design.plus(new MajorConnector(MAJOR, form, Span.of(46, 36), shape));
    Laid bar = Mouths.laid(chart, design).find(MAJOR).orElseThrow();
    assertThat(bar.measure(Measure.MARGIN_CLEARANCE).getAsDouble()).isBetween(4.49, 5.2);
    assertThat(bar.measure(Measure.HEIGHT).getAsDouble()).isEqualTo(3.5);
  }

  @Test
  void aBarRunsFourToEightMillimetresIntoTheSaddlesAtBothEnds() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 35, 36, 37, 38, 45, 46, 47, 48);
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.LINGUAL_BAR));
    Path line = layout.find(MAJOR).orElseThrow().centreline().orElseThrow();
    for (Laid saddle : layout.all(Saddle.class)) {
      Point end = saddle.body().contains(line.start()) ? line.start() : line.end();
      assertThat(saddle.body().contains(end)).isTrue();
      double deep = saddle.body().outlines().get(0).toPath().distanceTo(end);
      assertThat(deep).isBetween(4.0, 12.0);
    }
  }

  @Test
  void theBarOfASymmetricMouthIsSymmetric() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 35, 36, 37, 45, 46, 47);
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.LINGUAL_BAR));
    Path line = layout.find(MAJOR).orElseThrow().centreline().orElseThrow();
    for (Point p : line.sampled(1)) {
      assertThat(line.distanceTo(new Point(-p.x(), p.y()))).isLessThan(0.05);
    }
  }

  @Test
  void aPlateCoversTheMarginsAndReachesTheContactPoints() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 36, 37, 38, 46, 47, 48);
    Layout layout = Mouths.laid(chart, Mouths.designed(chart, ConnectorForm.LINGUAL_PLATE));
    Laid plate = layout.find(MAJOR).orElseThrow();
    ArchForm form = layout.form();
    for (int fdi : new int[] {33, 32, 31, 41, 42, 43}) {
      var tooth = form.tooth(saddlewright.dentition.Tooth.of(fdi));
      assertThat(plate.body().contains(tooth.at(0, -0.8))).isTrue();
      assertThat(plate.body().contains(tooth.at(0, 0))).isFalse();
    }
    assertThat(plate.measure(Measure.MARGIN_CLEARANCE)).isEmpty();
  }

  /** Distance of the body, where it lies beside teeth and not in a saddle, from their margins. */
  private static double nearestPassed(ArchChart chart, Layout layout, Laid bar) {
    Ground ground = Ground.of(layout.form(), () -> RidgeFrame.of(layout.form()), layout.design());
    List<SaddleReach> reaches =
        layout.all(Saddle.class).stream()
            .map(l -> SaddleReach.of(ground, ((Saddle) l.component()).span()))
            .toList();
    double half = bar.measure(Measure.HEIGHT).getAsDouble() / 2;
    List<Point> necks = Necks.points(ground, Face.LINGUAL);
    double least = Double.POSITIVE_INFINITY;
    for (Point p : bar.centreline().orElseThrow().sampled(0.3)) {
      // Beside which place a point lies is read along the frame that the bar was laid in.
      double arc = stationOf(ground.ridge(), p);
      if (reaches.stream().noneMatch(r -> arc > r.from() - 0.5 && arc < r.to() + 0.5)) {
        for (Point q : necks) {
          least = Math.min(least, p.distanceTo(q) - half);
        }
      }
    }
    return least;
  }

  private static double stationOf(RidgeFrame ridge, Point p) {
    double best = Double.POSITIVE_INFINITY;
    double arc = 0;
    for (int i = 0; i < ridge.size(); i++) {
      double d = Path.of(ridge.station(i, 0), ridge.station(i, 16)).distanceTo(p);
      if (d < best) {
        best = d;
        arc = ridge.arc(i);
      }
    }
    return arc;
  }
}
