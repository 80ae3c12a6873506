package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;
import static saddlewright.chart.GapDecision.CLOSED;
import static saddlewright.chart.GapDecision.NOT_REPLACED;
import static saddlewright.chart.GapDecision.REPLACED;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * Mouths that are easily classed wrongly: ten fixtures derived from Applegate's rules, and the
 * states a tooth can be in. Third molars stand unless a mouth says otherwise.
 */
class ClassificationTest {

  @Test
  void f1_dropped_molars_leave_a_free_end_area() {
    Mouths mouth = Mouths.upper().missing(15, 16).notReplaced(17, 18, 27, 28);
    assertThat(mouth.label()).isEqualTo("Kennedy Class II");
    assertThat(mouth.classified().reasoning())
        .containsExactly(
            "18, 17, 27 and 28 are missing and not replaced, so they are not considered"
                + " (Applegate's rules 2 and 4).",
            "16–15 has no tooth behind it, so it is a free-end area.",
            "A free-end area on one side only, the right, makes Class II.");
  }

  @Test
  void f2_one_central_incisor_does_not_cross_the_midline() {
    assertThat(Mouths.upper().missing(11).classified().reasoning())
        .containsExactly(
            "11 lies between 12 and 21, so it is a bounded area.",
            "The only area is bounded and does not cross the midline: Class III.");
  }

  @Test
  void f3_two_laterals_are_two_areas() {
    assertThat(Mouths.upper().missing(12, 22).label())
        .isEqualTo("Kennedy Class III modification 1");
  }

  @Test
  void f4_four_incisors() {
    assertThat(Mouths.upper().missing(11, 21, 12, 22).classified().reasoning())
        .containsExactly(
            "12–22 lies between 13 and 23, so it is a bounded area; it crosses the midline.",
            "The only area is bounded and crosses the midline, which makes Class IV.");
  }

  @Test
  void f5_a_second_area_turns_the_anterior_one_into_the_modification() {
    Classification found = Mouths.upper().missing(12, 11, 21, 22, 15).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class III modification 1");
    assertThat(found.reasoning())
        .contains(
            "The most posterior area, 15, decides (Applegate's rule 5).",
            "The other area, 12–22, is 1 modification: areas count, not the teeth in them"
                + " (Applegate's rules 6 and 7).");
  }

  @Test
  void f6_a_free_end_area_and_a_bounded_one() {
    assertThat(Mouths.lower().missing(45, 46, 47, 36).notReplaced(48).label())
        .isEqualTo("Kennedy Class II modification 1");
  }

  @Test
  void f7_second_molars_replaced_or_not_make_no_difference() {
    Mouths mouth = Mouths.lower().missing(35, 36, 45, 46).notReplaced(38, 48);
    assertThat(mouth.missing(37, 47).label())
        .isEqualTo(mouth.notReplaced(37, 47).label())
        .isEqualTo("Kennedy Class I");
  }

  @Test
  void f8_one_standing_tooth() {
    Classification found = Mouths.only(Arch.UPPER, 23).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class I");
    assertThat(found.reasoning())
        .contains(
            "23 is the only tooth that counts: a single abutment, which is unfavourable for a"
                + " partial denture.");
  }

  @Test
  void f9_a_closed_gap_is_no_area() {
    Classification found = Mouths.lower().closed(46).classified();
    assertThat(found.label()).isEqualTo("no class: nothing to replace");
    assertThat(found.areas()).isEmpty();
    assertThat(found.reasoning())
        .containsExactly(
            "The space of 46 has closed, so it is cut out of the arch and nothing is placed there.",
            "No tooth is to be replaced, so there is no Kennedy class.");
  }

  @Test
  void f10_a_third_molar_behind_the_gap_counts_only_as_an_abutment() {
    Mouths mouth = Mouths.lower().missing(36, 37);
    assertThat(mouth.label(38)).isEqualTo("Kennedy Class III");
    assertThat(mouth.label()).isEqualTo("Kennedy Class II");
  }

  /** Only teeth of one side stand, their own distal side needs nothing: one long free-end area. */
  @Test
  void remaining_teeth_of_one_side_with_nothing_to_replace_behind_them() {
    Mouths mouth = Mouths.only(Arch.UPPER, 24, 25, 26, 27).notReplaced(28);
    assertThat(mouth.label()).isEqualTo("Kennedy Class II");
    assertThat(mouth.classified().reasoning())
        .contains(
            "18–23 has no tooth behind it on the right, so it is a free-end area; it reaches across"
                + " the midline.",
            "All teeth that count stand on the left.");
  }

  @Test
  void remaining_teeth_of_one_side_with_replacements_behind_them() {
    assertThat(Mouths.only(Arch.UPPER, 23, 24, 25).label()).isEqualTo("Kennedy Class I");
  }

  @Test
  void one_standing_terminal_molar_leaves_one_free_end() {
    assertThat(Mouths.only(Arch.LOWER, 37).notReplaced(38).label()).isEqualTo("Kennedy Class II");
  }

  @Test
  void only_the_front_teeth_stand() {
    Mouths mouth = Mouths.only(Arch.LOWER, 43, 42, 41, 31, 32, 33);
    assertThat(mouth.label()).isEqualTo("Kennedy Class I");
    assertThat(mouth.missing(31).label()).isEqualTo("Kennedy Class I modification 1");
  }

  @Test
  void an_arch_without_teeth_has_no_class() {
    Classification found = Mouths.only(Arch.LOWER).classified();
    assertThat(found.label()).isEqualTo("no class: edentulous arch (complete denture)");
    assertThat(found.areas()).isEmpty();
    assertThat(found.reasoning())
        .containsExactly(
            "No tooth stands in the lower arch: it needs a complete denture, and a complete denture"
                + " has no Kennedy class.");
  }

  @Test
  void a_full_arch_has_no_class() {
    Classification found = Mouths.upper().classified();
    assertThat(found.kennedy()).isEqualTo(KennedyClass.NONE);
    assertThat(found.modifications()).isZero();
  }

  /** Our reading (decision 0010): a tooth stands, so the arch is not edentulous. */
  @Test
  void a_lone_idle_third_molar_does_not_make_a_complete_denture() {
    Classification found = Mouths.only(Arch.UPPER, 18).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class I");
    assertThat(found.reasoning())
        .contains(
            "17–28 has no counted tooth behind it on either side: free-end on both.",
            "Only 18 stands, and it is no abutment: a partial denture has nothing to hold on to."
                + " Use it as an abutment or consider a complete denture.");
    assertThat(Mouths.only(Arch.UPPER, 18).label(18)).isEqualTo("Kennedy Class II");
  }

  @Test
  void an_unreplaced_tooth_inside_a_run_does_not_split_it() {
    Classification found = Mouths.upper().missing(24, 26).notReplaced(25).classified();
    assertThat(found.label()).isEqualTo("Kennedy Class III");
    assertThat(found.areas())
        .containsExactly(
            new EdentulousArea(Span.of(24, 26), List.of(Tooth.T24, Tooth.T26), false, false));
    assertThat(found.reasoning())
        .contains(
            "25 is not replaced but lies in the same run of lost teeth as places that are; the run is"
                + " not split.");
  }

  @Test
  void a_closed_space_joins_the_gaps_beside_it() {
    assertThat(Mouths.upper().missing(24, 26).closed(25).label()).isEqualTo("Kennedy Class III");
    assertThat(Mouths.upper().missing(12, 21).closed(11).label()).isEqualTo("Kennedy Class IV");
  }

  /** Tooth identity decides the midline, not where the teeth drifted. */
  @Test
  void a_closed_central_incisor_does_not_carry_a_gap_across_the_midline() {
    assertThat(Mouths.upper().missing(11).closed(21).label()).isEqualTo("Kennedy Class III");
  }

  @Test
  void closed_spaces_at_the_end_of_the_arch_leave_a_free_end() {
    assertThat(Mouths.lower().missing(36).closed(37, 38).label()).isEqualTo("Kennedy Class II");
  }

  /** Not covered by Applegate; overdenture teaching counts the place as edentulous. */
  @Test
  void a_retained_root_is_an_edentulous_place() {
    Mouths mouth = Mouths.lower().with(ToothStatus.RETAINED_ROOT, REPLACED, 33);
    assertThat(mouth.label()).isEqualTo("Kennedy Class III");
    assertThat(mouth.classified().reasoning())
        .startsWith(
            "33 is a retained root: no crown stands, so its place counts as edentulous; no clasp can"
                + " go there, though the root can help to carry a saddle.");
  }

  @Test
  void an_unerupted_tooth_does_not_stand() {
    Mouths mouth = Mouths.lower().missing(36, 37).with(ToothStatus.UNERUPTED, NOT_REPLACED, 38);
    assertThat(mouth.label(38)).isEqualTo("Kennedy Class II");
    assertThat(mouth.classified().reasoning()).startsWith("38 is unerupted and counts as lost.");
  }

  /** The class stays that of the natural teeth (decision 0010). */
  @Test
  void an_implant_under_the_denture_is_an_edentulous_place() {
    Mouths mouth = Mouths.lower().missing(36).with(ToothStatus.IMPLANT, REPLACED, 37).closed(38);
    assertThat(mouth.label()).isEqualTo("Kennedy Class II");
    assertThat(mouth.classified().reasoning())
        .startsWith(
            "37 is an implant under the denture: its place counts as edentulous, and the class is"
                + " that of the natural teeth.");
  }

  @Test
  void an_implant_with_a_crown_of_its_own_stands() {
    Mouths mouth = Mouths.lower().missing(36).with(ToothStatus.IMPLANT, NOT_REPLACED, 37);
    assertThat(mouth.label()).isEqualTo("Kennedy Class III");
    assertThat(mouth.classified().reasoning())
        .startsWith("37 is an implant with a crown of its own and counts as standing.");
  }

  @Test
  void finds_the_area_at_a_place() {
    Classification found = Mouths.lower().missing(35, 36).classified();
    assertThat(found.areaAt(Tooth.T36)).contains(found.areas().get(0));
    assertThat(found.areaAt(Tooth.T37)).isEmpty();
    assertThat(found.areaAt(Tooth.T16)).isEmpty();
  }

  @Test
  void finds_the_teeth_that_bound_an_area_past_closed_spaces() {
    ArchChart chart = Mouths.lower().missing(36).with(ToothStatus.MISSING, CLOSED, 35).chart();
    EdentulousArea area = Classification.of(chart, Set.of()).areas().get(0);
    ArchPattern pattern = ArchPattern.of(chart, Set.of());
    assertThat(pattern.countedBefore(area.span())).contains(Tooth.T34);
    assertThat(pattern.countedAfter(area.span())).contains(Tooth.T37);
  }
}
