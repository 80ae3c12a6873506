package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;

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
    return MouthPreparations.of(Assessment.of(out));
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
                .with(Tooth.T35, Mouths.standing().withCondition(Optional.of(Condition.CARIOUS)))
                .with(
                    c.lowerChart()
                        .softTissues()
                        .withRidge(Side.LEFT, Optional.of(SoftTissues.RidgeState.FLABBY))));
    List<Preparation> found =
        of(
            c,
            Saddle.of(id("s"), Span.of(36, 37)),
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

  private static Preparation one(List<Preparation> all, PreparationKind kind) {
    return all.stream().filter(p -> p.kind() == kind).findFirst().orElseThrow();
  }

  private static Case charted(Case c, Tooth t, java.util.function.UnaryOperator<ToothFindings> f) {
    return c.with(c.lowerChart().with(t, f.apply(c.lowerChart().tooth(t))));
  }

  private static List<String> warnings(Preparation p) {
    return p.warnings().stream().map(PreparationWarning::sentence).toList();
  }

  /**
   * McCracken, chapter on rests (read in a copy), and rest seat slides: a rounded, spoon-shaped
   * triangle, at least 2.5 mm wide and as long as wide, the ridge lowered 1.0 to 1.5 mm, floor to
   * minor connector less than 90 degrees.
   */
  @Test
  void an_occlusal_seat_has_the_sizes_of_the_texts() {
    assertThat(
            of(Mouths.lowerMissing(36), Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL))
                .get(0)
                .target())
        .isEqualTo(
            "cut a spoon-shaped seat at least 2.5 mm wide and as long, 1–1.5 mm deep at the"
                + " marginal ridge, deepest inside");
  }

  @Test
  void a_school_that_teaches_other_sizes_is_followed() {
    Case c = Mouths.lowerMissing(36);
    Profile own =
        Profile.own(
            "Deep seats",
            "1",
            "uk-teaching",
            Profile.Axis.CLASP,
            Map.of(
                Quantity.SEAT_DEPTH,
                Threshold.of(2, Source.read("course book, page 3")),
                Quantity.GUIDE_PLANE_HEIGHT,
                Threshold.of(5, Source.read("course book, page 4"))),
            Map.of());
    List<Preparation> found =
        of(
            c.withProfile(own),
            Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL),
            new GuidePlate(id("p"), Tooth.T37, End.MESIAL));
    assertThat(one(found, PreparationKind.REST_SEAT).target()).contains("1–2 mm deep");
    assertThat(one(found, PreparationKind.REST_SEAT).source().citation())
        .isEqualTo("course book, page 3");
    assertThat(one(found, PreparationKind.GUIDE_PLANE).target())
        .startsWith("flat plane at least 5 mm high");
  }

  /** McCracken, chapter on rests: past the middle of the tooth (read in a copy). */
  @ParameterizedTest
  @CsvSource({
    "EXTENDED, ', carried past the centre of the tooth'",
    "DOUBLE, ', carried through the fissure to the other marginal ridge'",
    "EMBRASURE, ', open to the embrasure'"
  })
  void the_form_of_a_rest_tells_how_far_its_seat_runs(Rest.Form form, String extent) {
    Rest rest = Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL).withForm(form);
    assertThat(of(Mouths.lowerMissing(36), rest).get(0).target()).endsWith(extent);
  }

  /**
   * Rev Odonto Ciênc on seat depth in bicuspids: enamel of 0.5 to 0.6 mm, more than half of the
   * seats in dentine, 1.5 mm usually impossible within enamel.
   */
  @Test
  void a_seat_in_premolar_enamel_is_warned_of_and_one_in_a_molar_is_not() {
    List<Preparation> found =
        of(
            Mouths.lowerMissing(36),
            Rest.of(id("a"), Tooth.T35, RestSite.DISTAL_OCCLUSAL),
            Rest.of(id("b"), Tooth.T37, RestSite.MESIAL_OCCLUSAL));
    assertThat(found.get(0).teeth()).containsExactly(Tooth.T35);
    assertThat(warnings(found.get(0)))
        .anyMatch(w -> w.startsWith("Premolar enamel is about 0.5–0.6 mm"));
    assertThat(found.get(0).warnings().get(1).source().citation()).contains("bicuspids");
    assertThat(warnings(found.get(1))).noneMatch(w -> w.contains("enamel"));
  }

  /** Slides after Davenport et al.: thin lingual enamel; Mazurat 2000: a marginal-ridge seat. */
  @Test
  void a_cut_seat_on_a_lower_front_tooth_is_warned_of_with_its_alternatives() {
    Preparation canine =
        of(Mouths.lowerMissing(36), Rest.of(id("r"), Tooth.T33, RestSite.CINGULUM)).get(0);
    assertThat(canine.target())
        .isEqualTo(
            "cut an inverted V at least 2.5 mm wide, 2 mm front to back, 1.5 mm deep; stop short"
                + " of dentine");
    assertThat(warnings(canine))
        .containsExactly(
            "The lingual enamel of lower front teeth is thin and is easily cut through; a bonded"
                + " composite seat, a seat on the marginal ridge or a restoration does without.");
    Preparation incisor =
        of(Mouths.lowerMissing(36), Rest.of(id("r"), Tooth.T32, RestSite.CINGULUM)).get(0);
    assertThat(warnings(incisor).get(0)).doesNotContain("marginal ridge");
    Rest composite = Rest.of(id("r"), Tooth.T33, RestSite.CINGULUM).withSeat(Rest.Seat.COMPOSITE);
    assertThat(of(Mouths.lowerMissing(36), composite).get(0).warnings()).isEmpty();
  }

  /**
   * About 2.5 mm wide and 1.5 mm deep, and visible (sizes read in notes; that it shows, memory).
   */
  @Test
  void an_incisal_notch_shows() {
    Preparation p =
        of(Mouths.lowerMissing(36), Rest.of(id("r"), Tooth.T33, RestSite.MESIAL_INCISAL)).get(0);
    assertThat(p.target()).isEqualTo("cut a rounded notch 2.5 mm wide and 1.5 mm deep");
    assertThat(warnings(p).get(0)).startsWith("The metal shows");
  }

  /** Slides after Davenport et al.: no room from the lower supporting cusps. */
  @Test
  void room_is_never_gained_from_lower_buccal_cusps() {
    Case c = Mouths.lowerMissing(36);
    Rest rest = Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL);
    String unknown = warnings(of(c, rest).get(0)).get(1);
    assertThat(unknown)
        .isEqualTo(
            "Check on softened wax that 1 mm of metal finds room; do not gain it from the buccal"
                + " cusps of lower teeth.");
    Case tight =
        charted(c, Tooth.T37, f -> f.withClearance(RestSite.MESIAL_OCCLUSAL, Optional.of(0.6)));
    assertThat(warnings(of(tight, rest).get(0)))
        .contains("Do not gain room by grinding the buccal cusps of lower teeth.");
    Case ample =
        charted(c, Tooth.T37, f -> f.withClearance(RestSite.MESIAL_OCCLUSAL, Optional.of(1.5)));
    assertThat(warnings(of(ample, rest).get(0))).noneMatch(w -> w.contains("cusps of lower"));
  }

  /** One teaching text rules amalgam out, another accepts it (read in both). */
  @Test
  void a_seat_on_a_filled_tooth_is_warned_of() {
    Rest rest = Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL);
    Case c = Mouths.lowerMissing(36);
    Case amalgam = charted(c, Tooth.T37, f -> f.withCondition(Optional.of(Condition.AMALGAM)));
    assertThat(warnings(of(amalgam, rest).get(0)))
        .anyMatch(w -> w.startsWith("The tooth has an amalgam"));
    Case restored = charted(c, Tooth.T37, f -> f.withCondition(Optional.of(Condition.RESTORED)));
    assertThat(warnings(of(restored, rest).get(0)))
        .anyMatch(w -> w.contains("wholly in enamel or wholly within the restoration"));
    assertThat(warnings(of(restored, rest.withSeat(Rest.Seat.RESTORATION)).get(0)))
        .noneMatch(w -> w.contains("wholly"));
  }

  /** McCracken, preparation of abutment teeth: crowns are surveyed, made before the impression. */
  @Test
  void a_crowned_abutment_is_a_surveyed_crown_with_all_built_in() {
    Case c =
        charted(
            Mouths.lowerMissing(36, 37),
            Tooth.T35,
            f -> f.withCondition(Optional.of(Condition.CROWNED)));
    List<Preparation> found =
        of(
            c,
            Rest.of(id("r"), Tooth.T35, RestSite.MESIAL_OCCLUSAL),
            new GuidePlate(id("p"), Tooth.T35, End.DISTAL),
            iBar());
    assertThat(found.get(0).target())
        .isEqualTo(
            "surveyed crown, finished before the master impression, with what is listed below for"
                + " this tooth built in");
    assertThat(found.get(0).kind()).isEqualTo(PreparationKind.RESTORATION);
    assertThat(found)
        .filteredOn(p -> p.kind().altersTeeth())
        .hasSize(3)
        .allSatisfy(p -> assertThat(p.target()).contains("into the crown"));
    assertThat(warnings(one(found, PreparationKind.REST_SEAT)))
        .noneMatch(w -> w.contains("enamel"));
  }

  /** McCracken, preparation of abutment teeth: endodontic response is settled beforehand. */
  @Test
  void a_root_filled_or_loose_abutment_is_watched_before_the_denture_is_begun() {
    Case c =
        charted(
            Mouths.lowerMissing(36, 37),
            Tooth.T35,
            f -> f.withCondition(Optional.of(Condition.ROOT_FILLED)).withMobility(Optional.of(3)));
    List<Preparation> found = of(c, Rest.of(id("r"), Tooth.T35, RestSite.MESIAL_OCCLUSAL));
    assertThat(found)
        .extracting(p -> p.key().demand())
        .contains(Demand.ROOT_FILLING, Demand.DISEASE);
    assertThat(of(c)).isEmpty();
  }

  /** Lectures on mouth preparation: adjust the plane or the over-erupted tooth, or restore it. */
  @Test
  void a_saddle_without_height_asks_for_room_from_the_opposing_teeth() {
    Case c = charted(Mouths.lowerMissing(36), Tooth.T36, f -> f.withSaddleSpace(Optional.of(2.0)));
    Preparation p = of(c, Saddle.of(id("s"), Span.of(36, 36))).get(0);
    assertThat(p.key().demand()).isEqualTo(Demand.ROOM);
    assertThat(p.target())
        .isEqualTo(
            "only 2.0 mm from the ridge to the opposing teeth, 3.0 mm needed: adjust or restore the"
                + " opposing teeth to an even occlusal plane");
    Case roomy =
        charted(Mouths.lowerMissing(36), Tooth.T36, f -> f.withSaddleSpace(Optional.of(6.0)));
    assertThat(of(roomy, Saddle.of(id("s"), Span.of(36, 36)))).isEmpty();
  }

  /** Slides on mouth preparation: a parallel lingual surface for a reciprocal arm or plate. */
  @Test
  void a_reciprocal_plate_asks_for_a_parallel_surface_as_an_arm_does() {
    Case c = undercut(0.25);
    List<Preparation> plated = of(c, iBar(), new Plating(id("l"), Span.of(35, 35)));
    assertThat(one(plated, PreparationKind.SURVEY_LINE))
        .satisfies(
            p -> {
              assertThat(p.surface()).isEqualTo("lingual");
              assertThat(p.target()).contains("parallel to the path, 2–4 mm high");
              assertThat(p.components()).containsExactly(id("l"));
            });
    assertThat(of(c, new Plating(id("l"), Span.of(35, 35)))).isEmpty();
  }

  /** McCracken: contours are lowered in enamel; tip in the gingival third (from memory). */
  @Test
  void a_survey_line_that_is_too_high_is_lowered() {
    Clasp arm =
        Clasp.of(id("c"), Tooth.T35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL);
    Case high =
        charted(
            Mouths.lowerMissing(36),
            Tooth.T35,
            f ->
                f.withCrown(Optional.of(7.5), Optional.empty(), Optional.empty())
                    .withUndercut(
                        Zone.MESIOBUCCAL, Optional.of(new Undercut(0.25, Optional.of(4.0)))));
    assertThat(one(of(high, arm), PreparationKind.SURVEY_LINE).target())
        .isEqualTo(
            "lower the survey line so that the tip lies in the gingival third, at most 2.5 mm above"
                + " the gingival margin (charted at 4.0 mm)");
    Case low =
        charted(
            high,
            Tooth.T35,
            f ->
                f.withUndercut(
                    Zone.MESIOBUCCAL, Optional.of(new Undercut(0.25, Optional.of(2.0)))));
    assertThat(of(low, arm)).isEmpty();
  }

  /** McCracken: change the path, recontour, block out. */
  @Test
  void a_ridge_that_overhangs_under_a_bar_arm_is_named() {
    Case c = undercut(0.25);
    Case deep =
        c.with(
            c.lowerChart()
                .with(
                    c.lowerChart().softTissues().withTissueUndercut(Tooth.T35, Optional.of(1.6))));
    assertThat(one(of(deep, iBar()), PreparationKind.TISSUES).target())
        .startsWith("tissue undercut of 1.6 mm, at most 1.0 mm wanted: change the path");
  }

  /** McCracken: an altered-cast or functional impression for a distal extension. */
  @Test
  void a_free_end_plans_its_altered_cast_and_a_bounded_saddle_does_not() {
    Rest rest = Rest.of(id("r"), Tooth.T35, RestSite.MESIAL_OCCLUSAL);
    List<Preparation> free =
        of(Mouths.lowerMissing(36, 37), rest, Saddle.of(id("s"), Span.of(36, 37)));
    assertThat(one(free, PreparationKind.LATER))
        .satisfies(
            p -> {
              assertThat(p.target()).startsWith("plan an altered-cast (functional) impression");
              assertThat(p.surface()).isEqualTo("left");
            });
    assertThat(of(Mouths.lowerMissing(36), rest, Saddle.of(id("s"), Span.of(36, 36))))
        .noneMatch(p -> p.kind() == PreparationKind.LATER);
  }

  /** McCracken: indirect retention, a flexible clasp and a second impression are provided for. */
  @Test
  void a_doubtful_tooth_is_planned_for() {
    Case c = charted(Mouths.lowerMissing(36), Tooth.T37, f -> f.withDoubtful(true));
    assertThat(of(c)).isEmpty();
    Preparation p =
        one(of(c, Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL)), PreparationKind.LATER);
    assertThat(p.teeth()).containsExactly(Tooth.T37);
    assertThat(p.target()).contains("indirect retainer", "flexible clasp", "second impression");
  }

  /** Dental Update 2018;45: some stages may be impossible, so full information is sent. */
  @Test
  void an_immediate_tooth_is_warned_of() {
    Case c =
        charted(Mouths.lowerMissing(36), Tooth.T35, f -> f.withStatus(ToothStatus.TO_BE_EXTRACTED));
    assertThat(warnings(of(c, Saddle.of(id("s"), Span.of(35, 36))).get(0)).get(0))
        .contains("cannot be tried in");
  }

  /** Two arms with one tip, or a plate on its own plane: what is done once is listed once. */
  @Test
  void no_two_preparations_share_a_key() {
    List<Preparation> found =
        of(
            Mouths.lowerMissing(36, 37),
            iBar(),
            Clasp.of(id("j"), Tooth.T35, ClaspForm.T_BAR, Zone.MID_BUCCAL, End.DISTAL),
            Clasp.of(id("e"), Tooth.T46, ClaspForm.EMBRASURE, Zone.DISTOBUCCAL, End.MESIAL),
            Clasp.of(id("f"), Tooth.T45, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL));
    assertThat(found).extracting(p -> p.key().text()).doesNotHaveDuplicates();
    assertThat(found)
        .filteredOn(p -> p.surface().equals("embrasure"))
        .singleElement()
        .satisfies(p -> assertThat(p.components()).containsExactly(id("e"), id("f")));
  }
}
