package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;
import static saddlewright.chart.GapDecision.NOT_REPLACED;
import static saddlewright.chart.GapDecision.REPLACED;
import static saddlewright.chart.ToothStatus.TO_BE_EXTRACTED;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;

/**
 * Applegate's eight rules for the Kennedy classification, one by one. The rules are given by
 * content as student texts repeat them (checked against three such summaries); the mouths are ours.
 */
class ApplegatesRulesTest {

  /** Rule 1: classification follows extractions that may alter it, rather than preceding them. */
  @Test
  void rule_1_planned_extractions_count_as_lost() {
    Classification found =
        Mouths.lower().missing(36).with(TO_BE_EXTRACTED, REPLACED, 37).notReplaced(38).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class II");
    assertThat(found.reasoning())
        .contains(
            "37 is to be extracted and counts as lost (Applegate's rule 1); until then the arch is"
                + " Kennedy Class III.");
  }

  @Test
  void rule_1_an_extraction_that_opens_the_first_gap() {
    assertThat(Mouths.upper().with(TO_BE_EXTRACTED, REPLACED, 11, 21).classified().reasoning())
        .startsWith(
            "11 and 21 are to be extracted and count as lost (Applegate's rule 1); until then"
                + " nothing is to be replaced.")
        .contains("The only area is bounded and crosses the midline, which makes Class IV.");
  }

  /** Rule 2: a third molar that is missing and not to be replaced is not considered. */
  @Test
  void rule_2_missing_third_molars_that_are_not_replaced_are_not_considered() {
    Classification found = Mouths.lower().missing(46).notReplaced(38, 48).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class III");
    assertThat(found.reasoning())
        .contains(
            "48 and 38 are missing and not replaced, so they are not considered"
                + " (Applegate's rule 2).");
  }

  /** Rule 3: a third molar that is present and used as an abutment is considered. */
  @Test
  void rule_3_a_third_molar_used_as_an_abutment_bounds_the_area_in_front_of_it() {
    Classification found = Mouths.lower().missing(36, 37).classified(38);
    assertThat(found.label()).isEqualTo("Kennedy Class III");
    assertThat(found.reasoning())
        .startsWith(
            "38 stands and serves as an abutment, so it counts (Applegate's rule 3) and bounds"
                + " 36–37.",
            "36–37 lies between 35 and 38, so it is a bounded area.");
  }

  @Test
  void rule_3_the_chart_can_name_the_abutment_as_well_as_the_design() {
    ArchChart chart =
        Mouths.lower()
            .missing(36, 37)
            .chart()
            .with(Tooth.T38, ToothFindings.STANDING.withAbutment(true));
    assertThat(new Mouths(chart).label()).isEqualTo("Kennedy Class III");
  }

  /** Rule 3 read the other way round: unused, it is not considered, so nothing stands behind. */
  @Test
  void rule_3_an_idle_third_molar_leaves_the_area_in_front_of_it_free_end() {
    Classification found = Mouths.lower().missing(36, 37).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class II");
    assertThat(found.reasoning())
        .startsWith(
            "38 stands but is no abutment, so it does not count (Applegate's rule 3) and the area in"
                + " front of it is free-end.",
            "36–37 has no counted tooth behind it, so it is a free-end area.");
  }

  @Test
  void rule_3_is_not_mentioned_where_it_changes_nothing() {
    assertThat(Mouths.lower().missing(46).classified().reasoning())
        .noneMatch(s -> s.contains("3)"));
  }

  /** Rule 4: a second molar that is missing and not to be replaced is not considered. */
  @Test
  void rule_4_missing_second_molars_that_are_not_replaced_are_not_considered() {
    Classification found = Mouths.upper().missing(24).notReplaced(17, 18).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class III");
    assertThat(found.reasoning())
        .contains(
            "18 and 17 are missing and not replaced, so they are not considered"
                + " (Applegate's rules 2 and 4).");
    assertThat(Mouths.upper().missing(24).notReplaced(17).classified().reasoning())
        .contains("17 is missing and not replaced, so it is not considered (Applegate's rule 4).");
  }

  /** Rules 2 and 4 where the run goes on in front: the area ends where replacing ends. */
  @Test
  void rules_2_and_4_leave_the_dropped_molars_out_of_the_area() {
    Classification found = Mouths.upper().missing(15, 16).notReplaced(17, 18).classified();
    assertThat(found.areas())
        .singleElement()
        .satisfies(
            area -> {
              assertThat(area.span()).hasToString("16–15");
              assertThat(area.freeEnd()).isTrue();
            });
  }

  /** Rule 5: the most posterior edentulous area or areas always determine the classification. */
  @Test
  void rule_5_the_most_posterior_area_decides() {
    Classification found = Mouths.upper().missing(11, 21, 25, 26, 27).notReplaced(28).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class II modification 1");
    assertThat(found.reasoning())
        .contains("The free-end area is the most posterior and decides (Applegate's rule 5).");
  }

  /** Rule 6: further areas are modifications, and are given by their number. */
  @Test
  void rule_6_further_areas_are_modifications_by_number() {
    Classification found =
        Mouths.lower().missing(36, 37, 46, 47, 44, 42, 32).notReplaced(38, 48).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class I modification 3");
    assertThat(found.reasoning())
        .contains(
            "The other areas, 44, 42 and 32, are 3 modifications: areas count, not the teeth in"
                + " them (Applegate's rules 6 and 7).");
  }

  /** Rule 7: the extent of a modification is not considered, only the number of areas. */
  @Test
  void rule_7_the_extent_of_a_modification_does_not_matter() {
    Mouths mouth = Mouths.lower().missing(36, 37).notReplaced(38);
    assertThat(mouth.missing(44).label())
        .isEqualTo(mouth.missing(45, 44, 43, 42).label())
        .isEqualTo("Kennedy Class II modification 1");
  }

  /** Rule 8: there can be no modification areas in Class IV. */
  @ParameterizedTest
  @ValueSource(ints = {16, 15, 14, 24, 25, 26})
  void rule_8_class_iv_has_no_modifications(int further) {
    assertThat(Mouths.upper().missing(11, 21).label()).isEqualTo("Kennedy Class IV");
    Classification found = Mouths.upper().missing(11, 21, further).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class III modification 1");
    assertThat(found.reasoning())
        .contains(
            "Class IV has no modifications (Applegate's rule 8): with another area to restore,"
                + " 11–21 does not make it Class IV.");
  }

  @Test
  void rule_8_a_gap_that_stays_open_does_not_disturb_class_iv() {
    Mouths mouth = Mouths.upper().missing(11, 21).with(TO_BE_EXTRACTED, NOT_REPLACED, 15);
    assertThat(mouth.label()).isEqualTo("Kennedy Class IV");
    assertThat(mouth.classified().reasoning())
        .contains("15 is missing and not replaced, and makes no area.");
  }
}
