package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.Saddle;
import saddlewright.geometry.Region;

class SaddlePlacementTest {
  private static final ComponentId ID = ComponentId.of("saddle-1");

  @Provide
  Arbitrary<ArchChart> upper() {
    return Mouths.any(Arch.UPPER);
  }

  @Provide
  Arbitrary<ArchChart> lower() {
    return Mouths.any(Arch.LOWER);
  }

  @Property(tries = 60)
  void noUpperSaddleCoversAStandingCrown(@ForAll("upper") ArchChart chart) {
    assertNoCrownCovered(chart);
  }

  @Property(tries = 60)
  void noLowerSaddleCoversAStandingCrown(@ForAll("lower") ArchChart chart) {
    assertNoCrownCovered(chart);
  }

  private static void assertNoCrownCovered(ArchChart chart) {
    Layout layout = Mouths.laid(chart, Mouths.saddles(chart));
    for (Laid saddle : layout.all(Saddle.class)) {
      for (Tooth t : chart.standing()) {
        Region crown = layout.form().tooth(t).outline().toRegion();
        // Nothing may lie deeper than 0.2 mm inside a crown.
        assertThat(saddle.body().intersection(crown.grown(-0.2)).area())
            .as("%s over %s", saddle.component().teeth(), t)
            .isLessThan(0.01);
      }
    }
  }

  /**
   * R-041 of common teaching: the saddle touches the abutment's proximal surface, no dead space.
   */
  @Test
  void aBoundedSaddleLiesAgainstBothAbutments() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 35, 36);
    Layout layout = Mouths.laid(chart, Mouths.saddles(chart));
    Region body = layout.find(ID).orElseThrow().body();
    for (int fdi : new int[] {34, 37}) {
      assertThat(body.distanceTo(layout.form().tooth(Tooth.of(fdi)).outline().toRegion()))
          .isLessThan(0.25);
    }
    assertThat(body.pieces()).hasSize(1);
  }

  /** Common practice: a lower free-end saddle covers two thirds of the retromolar pad. */
  @ParameterizedTest
  @EnumSource(Side.class)
  void aLowerFreeEndSaddleCoversMostOfThePadEvenWhenTheLastTeethAreNotReplaced(Side side) {
    ArchChart chart = Mouths.missing(Arch.LOWER, 36, 37, 46, 47);
    chart = chart.with(Tooth.T38, Mouths.lost(GapDecision.NOT_REPLACED));
    chart = chart.with(Tooth.T48, Mouths.lost(GapDecision.NOT_REPLACED));
    Layout layout = Mouths.laid(chart, Mouths.saddles(chart));
    Region pad = layout.form().pad(side).toRegion();
    double covered =
        layout.all(Saddle.class).stream().mapToDouble(l -> l.body().intersection(pad).area()).sum();
    assertThat(covered / pad.area()).isBetween(0.5, 0.85);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void anUpperFreeEndSaddleCoversTheTuberosity(Side side) {
    ArchChart chart = Mouths.missing(Arch.UPPER, 16, 17, 18, 26, 27, 28);
    Layout layout = Mouths.laid(chart, Mouths.saddles(chart));
    Region pad = layout.form().pad(side).toRegion();
    double covered =
        layout.all(Saddle.class).stream().mapToDouble(l -> l.body().intersection(pad).area()).sum();
    assertThat(covered / pad.area()).isGreaterThan(0.8);
  }

  @Test
  void flangesDifferInDepth() {
    double full = area(Saddle.Flange.FULL);
    double part = area(Saddle.Flange.PART);
    double none = area(Saddle.Flange.GUM_FITTED);
    assertThat(full).isGreaterThan(part + 10);
    assertThat(part).isGreaterThan(none + 10);
  }

  private static double area(Saddle.Flange flange) {
    ArchChart chart = Mouths.missing(Arch.UPPER, 12, 11, 21, 22);
    ArchDesign design =
        ArchDesign.empty(Arch.UPPER)
            .plus(
                new Saddle(
                    ID,
                    Span.of(12, 22),
                    Saddle.Base.ACRYLIC_ON_MESH,
                    flange,
                    Saddle.Finish.ACRYLIC));
    return Mouths.laid(chart, design).find(ID).orElseThrow().body().area();
  }

  @Test
  void aSaddleAcrossTheMidlineIsTheSameOnBothSides() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 32, 31, 41, 42);
    Region body = Mouths.laid(chart, Mouths.saddles(chart)).find(ID).orElseThrow().body();
    Region other = body.transformed(saddlewright.geometry.Transform.MIRROR_X);
    assertThat(body.intersection(other).area()).isCloseTo(body.area(), within(0.02 * body.area()));
  }
}
