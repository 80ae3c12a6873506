package saddlewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/**
 * What a clasp unit places. The parts of the RPI set (mesial rest with its minor connector in the
 * mesiolingual embrasure, distal plate, I-bar, no lingual arm) are as Krol and the undergraduate
 * notes gathered in the rule sources describe them; the rest is common practice.
 */
class ClaspUnitTest {
  private static final ArchDesign EMPTY = ArchDesign.empty(Arch.LOWER);

  private static ArchChart missing(int... fdis) {
    ArchChart c = ArchChart.full(Arch.LOWER);
    for (int fdi : fdis) {
      c = c.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    return c;
  }

  @Test
  void a_free_end_abutment_with_a_mid_buccal_undercut_is_first_offered_the_rpi_set() {
    ArchChart chart = missing(36, 37, 38);
    assertThat(ClaspUnit.reaching(chart, EMPTY, Tooth.T35, Zone.MID_BUCCAL))
        .startsWith(ClaspUnit.RPI);
    assertThat(ClaspUnit.RPI.on(chart, EMPTY, Tooth.T35, Zone.MID_BUCCAL).parts())
        .extracting(p -> p.withId(ComponentId.of("x")))
        .containsExactlyInAnyOrder(
            Rest.of(ComponentId.of("x"), Tooth.T35, RestSite.MESIAL_OCCLUSAL),
            new MinorConnector(
                ComponentId.of("x"), Tooth.T35, MinorConnector.Place.MESIAL_EMBRASURE),
            new GuidePlate(ComponentId.of("x"), Tooth.T35, End.DISTAL),
            Clasp.of(ComponentId.of("x"), Tooth.T35, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL));
  }

  @Test
  void a_disto_buccal_undercut_at_a_free_end_is_first_offered_a_bar() {
    assertThat(ClaspUnit.reaching(missing(36, 37, 38), EMPTY, Tooth.T35, Zone.DISTOBUCCAL))
        .startsWith(ClaspUnit.HALF_T);
  }

  @Test
  void an_undercut_away_from_a_bounded_gap_takes_a_three_arm_clasp_from_the_gap() {
    ArchChart chart = missing(46);
    assertThat(ClaspUnit.reaching(chart, EMPTY, Tooth.T47, Zone.DISTOBUCCAL))
        .startsWith(ClaspUnit.THREE_ARM);
    assertThat(ClaspUnit.THREE_ARM.on(chart, EMPTY, Tooth.T47, Zone.DISTOBUCCAL).parts())
        .as("beside the saddle the rest needs no strut")
        .hasSize(3)
        .noneMatch(MinorConnector.class::isInstance)
        .filteredOn(Clasp.class::isInstance)
        .extracting(c -> ((Clasp) c).origin())
        .containsExactly(End.MESIAL);
  }

  @Test
  void parts_that_are_there_are_not_placed_again() {
    ArchChart chart = missing(36, 37, 38);
    ArchDesign rested =
        EMPTY.plus(Rest.of(ComponentId.of("mine"), Tooth.T35, RestSite.MESIAL_OCCLUSAL));
    assertThat(ClaspUnit.RPI.on(chart, rested, Tooth.T35, Zone.MID_BUCCAL).parts())
        .noneMatch(Rest.class::isInstance);
  }

  @Test
  void nothing_is_offered_on_a_tooth_that_does_not_stand() {
    assertThat(ClaspUnit.reaching(missing(36), EMPTY, Tooth.T36, Zone.MID_BUCCAL)).isEmpty();
  }

  @Test
  void an_embrasure_pair_needs_two_standing_back_teeth() {
    ArchChart full = ArchChart.full(Arch.LOWER);
    assertThat(ClaspUnit.EMBRASURE_PAIR.on(full, EMPTY, Tooth.T47, Zone.DISTOBUCCAL).parts())
        .filteredOn(Clasp.class::isInstance)
        .extracting(c -> ((Clasp) c).tooth())
        .containsExactly(Tooth.T47, Tooth.T46);
    assertThat(ClaspUnit.EMBRASURE_PAIR.on(missing(46), EMPTY, Tooth.T47, Zone.DISTOBUCCAL).parts())
        .isEmpty();
  }
}
