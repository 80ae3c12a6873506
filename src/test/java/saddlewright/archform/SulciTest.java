package saddlewright.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Point;

/** Charted soft tissues show in the plan where and as deep as they were measured. */
class SulciTest {
  private static final SoftTissues NONE = SoftTissues.UNCHARTED;

  private static ArchForm lower(SoftTissues tissues) {
    return ArchForm.of(ArchChart.full(Arch.LOWER).with(tissues));
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 5, 8, 11})
  void aMillimetreOfBuccalDepthIsAMillimetreInPlan(double depth) {
    ArchForm form = lower(NONE.withBuccalDepth(Tooth.T35, Optional.of(depth)));
    PlacedTooth t = form.tooth(Tooth.T35);
    Point rim = t.rim(t.degreesAcross(Face.BUCCAL));
    assertThat(form.buccalSulcus().distanceTo(rim.plus(t.outward().times(depth)))).isLessThan(0.2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {4, 6, 8})
  void aMillimetreOfLingualDepthIsAMillimetreInPlan(double depth) {
    ArchForm form = lower(NONE.withLingualDepth(Tooth.T35, Optional.of(depth)));
    PlacedTooth t = form.tooth(Tooth.T35);
    Point rim = t.rim(t.degreesAcross(Face.LINGUAL));
    assertThat(form.lingualSulcus().distanceTo(rim)).isCloseTo(depth, within(0.5));
  }

  @Test
  void anUnchartedFloorLeavesRoomForALingualBar() {
    // Bar 4 mm high, 3 mm from the margin, 1 mm from the floor (common practice): 8 mm.
    ArchForm form = lower(NONE);
    for (Tooth tooth : Tooth.in(Arch.LOWER)) {
      if (tooth.position() >= 3 && tooth.position() <= 7) {
        PlacedTooth t = form.tooth(tooth);
        Point rim = t.rim(t.degreesAcross(Face.LINGUAL));
        assertThat(form.lingualSulcus().distanceTo(rim)).as("floor at " + tooth).isGreaterThan(7);
      }
    }
  }

  @Test
  void toriAreDrawnWhereCharted() {
    ArchForm form = lower(NONE.withTori(EnumSet.of(Torus.MANDIBULAR_LEFT, Torus.PALATAL)));
    assertThat(form.torus(Torus.MANDIBULAR_LEFT).orElseThrow().centroid().x()).isPositive();
    assertThat(form.torus(Torus.MANDIBULAR_RIGHT)).isEmpty();
    assertThat(form.torus(Torus.PALATAL)).as("no palate in a lower arch").isEmpty();
  }

  @Test
  void aHighLingualFrenumComesNearerToTheMargin() {
    double ordinary = lower(NONE).lingualFrenum().orElseThrow().end().y();
    double high = lower(NONE.withHighLingualFrenum(true)).lingualFrenum().orElseThrow().end().y();
    assertThat(high).isLessThan(ordinary);
  }

  @Test
  void palateEndsWhereItWasMeasured() {
    ArchForm form =
        ArchForm.of(ArchChart.full(Arch.UPPER).with(NONE.withPalateLimit(Optional.of(49.0))));
    assertThat(form.palateLimit().distanceTo(new Point(0, 49))).isLessThan(0.05);
    assertThat(form.raphe().orElseThrow().end().y()).isCloseTo(49, within(1e-9));
  }

  @Test
  void padsLieBehindTheLastPlace() {
    ArchForm form = lower(NONE);
    PlacedTooth eight = form.tooth(Tooth.T38);
    assertThat(eight.region().intersects(form.pad(Side.LEFT).toRegion())).isFalse();
    assertThat(eight.region().distanceTo(form.pad(Side.LEFT).toRegion())).isLessThan(2);
  }
}
