package saddlewright.archform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** Neighbours touch: no overlap beyond 0.2 mm and no gap beyond 0.3 mm (the sheet's own limits). */
class NeighboursTest {
  private static final double MOST_OVERLAP = 0.2;
  private static final double MOST_GAP = 0.3;

  @Provide
  Arbitrary<ArchChart> partlyLost() {
    return Arbitraries.of(Arch.values())
        .flatMap(
            arch ->
                Arbitraries.of(
                        ToothFindings.STANDING,
                        ToothFindings.STANDING,
                        ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED),
                        ToothFindings.of(ToothStatus.MISSING, GapDecision.NOT_REPLACED),
                        ToothFindings.of(ToothStatus.MISSING, GapDecision.CLOSED))
                    .list()
                    .ofSize(16)
                    .map(
                        list -> {
                          ArchChart chart = ArchChart.full(arch);
                          for (int i = 0; i < 16; i++) {
                            chart = chart.with(Tooth.at(arch, i), list.get(i));
                          }
                          return chart;
                        }));
  }

  @Property(tries = 150)
  void neighboursTouchWhateverIsLostOrClosed(@ForAll("partlyLost") ArchChart chart) {
    // Several closed places in a row leave a little more than one does.
    double gap = MOST_GAP + 0.05 * chart.where(chart::isClosed).size();
    check(ArchForm.of(chart), gap);
  }

  @Test
  void neighboursTouchInAFullArch() {
    for (Arch arch : Arch.values()) {
      check(ArchForm.of(ArchChart.full(arch)), MOST_GAP);
    }
  }

  @Test
  void turnedTeethStillTouch() {
    for (double degrees : new double[] {-90, -45, -15, 15, 45, 90, 180}) {
      ToothFindings turned = ToothFindings.STANDING.withRotation(Optional.of(degrees));
      ArchForm form =
          ArchForm.of(ArchChart.full(Arch.UPPER).with(Tooth.T15, turned).with(Tooth.T23, turned));
      // A turned crown touches where it is broadest, so its embrasures are wider than usual.
      check(form, 0.8);
    }
  }

  @Test
  void aMolarTiltedIntoAGapNarrowsIt() {
    ToothFindings lost = ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED);
    ArchChart upright = ArchChart.full(Arch.LOWER).with(Tooth.T46, lost);
    ArchChart tilted =
        upright.with(
            Tooth.T47,
            ToothFindings.STANDING.withTilt(Optional.of(Tilt.MESIAL), Optional.of(20.0)));
    double before = ArchForm.of(upright).tooth(Tooth.T46).halfWidth();
    double after = ArchForm.of(tilted).tooth(Tooth.T46).halfWidth();
    assertThat(2 * (before - after)).isBetween(1.0, 1.5);
    check(ArchForm.of(tilted), MOST_GAP);
  }

  @Test
  void teethBehindAClosedSpaceMoveForward() {
    ArchChart closed =
        ArchChart.full(Arch.LOWER)
            .with(Tooth.T36, ToothFindings.of(ToothStatus.MISSING, GapDecision.CLOSED));
    double before = ArchForm.of(ArchChart.full(Arch.LOWER)).tooth(Tooth.T37).centre().y();
    double after = ArchForm.of(closed).tooth(Tooth.T37).centre().y();
    // Wheeler's lower first molar is 11 mm wide.
    assertThat(before - after).isBetween(10.0, 11.2);
  }

  @Test
  void aLingualTiltMovesTheCrownLingually() {
    ToothFindings leaning =
        ToothFindings.STANDING.withTilt(Optional.of(Tilt.LINGUAL), Optional.of(12.0));
    PlacedTooth upright = ArchForm.of(ArchChart.full(Arch.LOWER)).tooth(Tooth.T35);
    PlacedTooth tilted =
        ArchForm.of(ArchChart.full(Arch.LOWER).with(Tooth.T35, leaning)).tooth(Tooth.T35);
    assertThat(upright.centre().to(tilted.centre()).dot(upright.outward())).isBetween(-1.5, -0.8);
    assertThat(tilted.halfDepth()).isLessThan(upright.halfDepth());
  }

  private static void check(ArchForm form, double mostGap) {
    List<PlacedTooth> row = form.teeth().stream().filter(t -> !t.isClosed()).toList();
    for (int i = 0; i + 1 < row.size(); i++) {
      PlacedTooth a = row.get(i);
      PlacedTooth b = row.get(i + 1);
      assertThat(a.region().distanceTo(b.region()))
          .as("gap between " + a.tooth() + " and " + b.tooth())
          .isLessThanOrEqualTo(mostGap);
      assertThat(
              a.region().grown(-MOST_OVERLAP / 2).intersects(b.region().grown(-MOST_OVERLAP / 2)))
          .as("overlap of " + a.tooth() + " and " + b.tooth())
          .isFalse();
    }
  }
}
