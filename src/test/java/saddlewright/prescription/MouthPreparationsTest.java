package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/** Order and sizes as in the teaching texts that each preparation names as its source. */
class MouthPreparationsTest {

  private static ComponentId id(String value) {
    return ComponentId.of(value);
  }

  private static List<Preparation> of(Case c, Component... parts) {
    Case out = c;
    for (Component p : parts) {
      out = out.with(out.lowerDesign().plus(p));
    }
    return MouthPreparations.of(Assessment.of(out), Notation.FDI);
  }

  private static Case undercut(double mm) {
    Case c = Mouths.lowerMissing(36, 37);
    return c.with(
        c.lowerChart()
            .with(
                Tooth.T35,
                Mouths.standing().withUndercut(Zone.MID_BUCCAL, Optional.of(Undercut.of(mm)))));
  }

  private static Clasp iBar() {
    return Clasp.of(id("i"), Tooth.T35, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL);
  }

  /**
   * Surgery, disease, guide planes, contours, undercuts, seats, polish: the order of texts on mouth
   * preparation (read in teaching notes).
   */
  @Test
  void they_come_in_clinical_order_whatever_the_order_of_placing() {
    Case c = Mouths.lowerMissing(36, 37);
    c =
        c.with(
            c.lowerChart()
                .with(
                    Tooth.T46, ToothFindings.of(ToothStatus.TO_BE_EXTRACTED, GapDecision.REPLACED))
                .with(Tooth.T35, Mouths.standing().withCondition(Optional.of(Condition.CARIOUS))));
    List<Preparation> found =
        of(
            c,
            Rest.of(id("r"), Tooth.T35, RestSite.MESIAL_OCCLUSAL),
            iBar(),
            new ReciprocalArm(id("a"), Tooth.T35, Face.LINGUAL, End.DISTAL),
            new GuidePlate(id("p"), Tooth.T35, End.DISTAL));
    assertThat(found).extracting(Preparation::kind).containsExactly(PreparationKind.values());
  }

  @Test
  void a_plane_beside_a_free_end_is_lower_than_one_beside_a_bounded_saddle() {
    List<Preparation> free =
        of(Mouths.lowerMissing(36, 37), new GuidePlate(id("p"), Tooth.T35, End.DISTAL));
    assertThat(free.get(0).target()).startsWith("flat plane 1.5–2 mm high");
    List<Preparation> bounded =
        of(Mouths.lowerMissing(36), new GuidePlate(id("p"), Tooth.T35, End.DISTAL));
    assertThat(bounded.get(0).target()).startsWith("flat plane 3–4 mm high");
  }

  @Test
  void a_plate_and_its_own_plane_are_one_preparation() {
    List<Preparation> found =
        of(
            Mouths.lowerMissing(36),
            new GuidePlate(id("p"), Tooth.T35, End.DISTAL),
            new GuidePlane(id("q"), Tooth.T35, GuidePlane.Surface.DISTAL));
    assertThat(found).filteredOn(p -> p.kind() == PreparationKind.GUIDE_PLANE).hasSize(1);
  }

  /** Cast cobalt-chromium takes 0.25 mm (British teaching notes; the profile's figure). */
  @Test
  void an_undercut_that_suffices_asks_for_nothing() {
    assertThat(of(undercut(0.25), iBar())).isEmpty();
  }

  @Test
  void a_shallow_undercut_is_added_to_and_a_deep_one_reduced() {
    assertThat(of(undercut(0.1), iBar()).get(0))
        .satisfies(
            p -> {
              assertThat(p.kind()).isEqualTo(PreparationKind.UNDERCUT);
              assertThat(p.surface()).isEqualTo("mid-buccal");
              assertThat(p.target())
                  .isEqualTo("deepen from 0.10 mm to 0.25 mm with bonded composite");
            });
    assertThat(of(undercut(0.75), iBar()).get(0))
        .satisfies(
            p -> {
              assertThat(p.kind()).isEqualTo(PreparationKind.SURVEY_LINE);
              assertThat(p.target())
                  .isEqualTo("reduce the undercut from 0.75 mm to 0.25 mm at the tip");
            });
  }

  @Test
  void a_tip_without_a_charted_undercut_is_surveyed_first() {
    assertThat(of(Mouths.lowerMissing(36, 37), iBar()).get(0).target())
        .isEqualTo("survey; where there is none, add composite to make a 0.25 mm undercut");
  }

  @Test
  void a_composite_seat_is_built_and_an_unprepared_one_left_alone() {
    Rest built =
        new Rest(
            id("b"), Tooth.T33, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.COMPOSITE, true);
    Rest left =
        new Rest(
            id("l"), Tooth.T43, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.UNPREPARED, true);
    List<Preparation> found = of(Mouths.lowerMissing(36), built, left);
    assertThat(found).filteredOn(p -> p.kind() == PreparationKind.REST_SEAT).hasSize(1);
    assertThat(found.get(0).target()).startsWith("build a composite ledge");
    assertThat(found.get(0).components()).containsExactly(id("b"));
  }

  /** At least 1 mm of metal has to fit above a seat (teaching slides on tooth preparation). */
  @Test
  void too_little_room_over_a_seat_is_said_with_the_seat() {
    Case c = Mouths.lowerMissing(36);
    c =
        c.with(
            c.lowerChart()
                .with(
                    Tooth.T37,
                    Mouths.standing().withClearance(RestSite.MESIAL_OCCLUSAL, Optional.of(0.6))));
    assertThat(of(c, Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL)).get(0).target())
        .endsWith("only 0.6 mm of room charted, 1.0 mm needed above the seat");
  }

  @Test
  void an_embrasure_clasp_asks_for_a_channel_between_the_two_teeth() {
    List<Preparation> found =
        of(
            Mouths.lowerMissing(36),
            Clasp.of(id("e"), Tooth.T46, ClaspForm.EMBRASURE, Zone.DISTOBUCCAL, End.MESIAL));
    assertThat(found)
        .filteredOn(p -> p.surface().equals("embrasure"))
        .singleElement()
        .satisfies(p -> assertThat(p.teeth()).containsExactly(Tooth.T46, Tooth.T45));
  }

  @Test
  void a_tooth_added_at_fitting_is_extracted_then_and_not_before() {
    Case c = Mouths.lowerMissing(36);
    c =
        c.with(
            c.lowerChart()
                .with(
                    Tooth.T35,
                    ToothFindings.of(ToothStatus.TO_BE_EXTRACTED, GapDecision.REPLACED)));
    assertThat(of(c, Saddle.of(id("s"), Span.of(35, 36))).get(0).target())
        .startsWith("extract when the denture is fitted");
    assertThat(of(c).get(0).target()).startsWith("extract, and let the ridge heal");
  }

  @Test
  void nothing_is_prepared_on_a_tooth_that_does_not_stand() {
    assertThat(of(Mouths.lowerMissing(36), Rest.of(id("r"), Tooth.T36, RestSite.MESIAL_OCCLUSAL)))
        .isEmpty();
  }
}
