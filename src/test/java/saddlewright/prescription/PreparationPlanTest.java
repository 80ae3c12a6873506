package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.dentition.End;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlate;
import saddlewright.design.Rest;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;

class PreparationPlanTest {
  private static final String SEAT = "lower/rest-seat/35/distal-occlusal/rest";
  private static final LocalDate DAY = LocalDate.of(2026, 11, 3);

  private static Case seatOn35() {
    Case c = Mouths.lowerMissing(36);
    return c.with(
        c.lowerDesign()
            .plus(Rest.of(ComponentId.of("r"), Tooth.T35, RestSite.DISTAL_OCCLUSAL))
            .plus(new GuidePlate(ComponentId.of("p"), Tooth.T35, End.DISTAL)));
  }

  private static Case noted(Case c, PreparationMark mark) {
    return c.with(c.prescription().with(c.prescription().preparations().with(mark)));
  }

  private static PreparationMark cut() {
    return PreparationMark.planned(SEAT)
        .withState(PreparationMark.State.DONE)
        .withOn(Optional.of(DAY))
        .withBy("A. B.");
  }

  private static PreparationPlan plan(Case c) {
    return PreparationPlan.of(Assessment.of(c), Notation.FDI);
  }

  @Test
  void a_mark_is_found_by_where_it_is_and_what_asks() {
    PreparationPlan.Entry seat = plan(noted(seatOn35(), cut())).find(SEAT).orElseThrow();
    assertThat(seat.standing()).isEqualTo("done on 3 November 2026 by A. B.");
    assertThat(seat.place()).isEqualTo("35 distal occlusal");
    assertThat(seat.origin()).isEqualTo(PreparationPlan.Origin.DESIGN);
  }

  @Test
  void the_number_is_that_of_the_component_on_the_sheet() {
    Assessment a = Assessment.of(seatOn35());
    int number =
        Schedule.of(a, Notation.FDI).lines().stream()
            .filter(l -> l.id().equals(ComponentId.of("r")))
            .findFirst()
            .orElseThrow()
            .number();
    assertThat(PreparationPlan.of(a, Notation.FDI).find(SEAT).orElseThrow().purpose())
        .isEqualTo("rest (no. " + number + ")");
  }

  @Test
  void a_mark_outlives_other_sizes_another_form_and_another_component_at_its_place() {
    Case c = noted(seatOn35(), cut());
    Profile deeper =
        Profile.own(
            "Deep",
            "1",
            "uk-teaching",
            Profile.Axis.CLASP,
            Map.of(Quantity.SEAT_DEPTH, Threshold.of(2, Source.read("x"))),
            Map.of());
    Rest moved =
        Rest.of(ComponentId.of("another"), Tooth.T35, RestSite.DISTAL_OCCLUSAL)
            .withForm(Rest.Form.EXTENDED)
            .asIndirectRetainer();
    Case later =
        c.withProfile(deeper).with(c.lowerDesign().without(ComponentId.of("r")).plus(moved));
    PreparationPlan.Entry seat = plan(later).find(SEAT).orElseThrow();
    assertThat(seat.isDone()).isTrue();
    assertThat(seat.target()).contains("1–2 mm deep", "past the centre");
    assertThat(seat.reason()).isEqualTo("rest as indirect retainer");
  }

  @Test
  void what_was_cut_stays_listed_when_the_design_asks_no_longer() {
    Case c = noted(seatOn35(), cut());
    Case without = c.with(c.lowerDesign().without(ComponentId.of("r")));
    PreparationPlan.Entry seat = plan(without).find(SEAT).orElseThrow();
    assertThat(seat.origin()).isEqualTo(PreparationPlan.Origin.FORMER);
    assertThat(seat.standing())
        .isEqualTo("no longer asked for by the design; done on 3 November 2026 by A. B.");
    assertThat(seat.place()).isEqualTo("35 distal occlusal");
    assertThat(seat.isBeforeMasterImpression()).isFalse();
    assertThat(plan(without).toText())
        .contains("35 distal occlusal: no longer asked for by the design; done on 3 November 2026");
  }

  @Test
  void a_mark_that_this_version_cannot_name_is_shown_and_not_dropped() {
    PreparationMark strange =
        PreparationMark.planned("lower/etching/35/-/glue").withState(PreparationMark.State.DONE);
    PreparationPlan plan = plan(noted(seatOn35(), strange));
    assertThat(plan.unknown()).containsExactly(strange);
    assertThat(plan.toText()).contains("lower/etching/35/-/glue: done");
  }

  @Test
  void own_words_stand_in_place_of_the_derived_until_they_are_taken_back() {
    Case c = noted(seatOn35(), PreparationMark.planned(SEAT).withTarget("shallow, in composite"));
    PreparationPlan.Entry seat = plan(c).find(SEAT).orElseThrow();
    assertThat(seat.target()).isEqualTo("shallow, in composite");
    assertThat(seat.isReworded()).isTrue();
    assertThat(plan(c).toText()).contains("shallow, in composite [own words]");
    PreparationPlan.Entry back =
        plan(noted(c, seat.mark().withTarget(""))).find(SEAT).orElseThrow();
    assertThat(back.target()).startsWith("cut a spoon-shaped seat");
    assertThat(back.isReworded()).isFalse();
  }

  @Test
  void own_items_stand_where_their_kind_is_done() {
    OwnPreparation own =
        new OwnPreparation(
            "1", PreparationKind.GUIDE_PLANE, List.of(Tooth.T45), "mesial", "flatten", "old crown");
    Case c = seatOn35();
    Case with = c.with(c.prescription().with(new Preparations(List.of(), List.of(own))));
    assertThat(plan(with).entries())
        .extracting(PreparationPlan.Entry::key)
        .containsExactly(
            "own/1", "lower/guide-plane/35/distal/guide", SEAT, "lower/finish/-/-/cut-surfaces");
  }

  @Test
  void only_what_is_checked_or_declined_with_a_reason_is_settled() {
    PreparationMark mark = PreparationMark.planned(SEAT);
    assertThat(settled(mark)).isFalse();
    assertThat(settled(cut())).isFalse();
    assertThat(settled(cut().withState(PreparationMark.State.CHECKED))).isTrue();
    assertThat(settled(mark.withState(PreparationMark.State.DECLINED))).isFalse();
    assertThat(settled(mark.withState(PreparationMark.State.DECLINED).withNote("patient refuses")))
        .isTrue();
  }

  private static boolean settled(PreparationMark mark) {
    return plan(noted(seatOn35(), mark)).find(SEAT).orElseThrow().isSettled();
  }

  @Test
  void what_is_wanting_in_a_note_is_said() {
    PreparationMark mark = PreparationMark.planned(SEAT);
    assertThat(gaps(mark.withState(PreparationMark.State.DECLINED)))
        .containsExactly("Declined without a reason: note why.");
    assertThat(gaps(mark.withState(PreparationMark.State.CHECKED)))
        .containsExactly(
            "No date: note the day on which it was done.",
            "Checked, but not by whom: note who checked it.");
    assertThat(gaps(cut())).isEmpty();
  }

  private static List<String> gaps(PreparationMark mark) {
    PreparationPlan plan = plan(noted(seatOn35(), mark));
    return plan.gaps(plan.find(SEAT).orElseThrow());
  }

  @Test
  void polishing_before_the_last_cut_is_not_the_last() {
    String finish = "lower/finish/-/-/cut-surfaces";
    Case c =
        noted(
            seatOn35(),
            PreparationMark.planned(finish)
                .withState(PreparationMark.State.DONE)
                .withOn(Optional.of(DAY)));
    PreparationPlan plan = plan(c);
    assertThat(plan.gaps(plan.find(finish).orElseThrow()))
        .containsExactly("2 surfaces are still to be prepared: polish again after them.");
  }

  @Test
  void every_key_is_read_back_as_it_was_written() {
    for (Preparation p : MouthPreparations.of(Assessment.of(seatOn35()))) {
      assertThat(PreparationKey.parse(p.key().text())).contains(p.key());
    }
    for (String wrong :
        List.of(
            "",
            "own/1",
            "lower/rest-seat/15/cingulum/rest",
            "lower/rest-seat/3x/cingulum/rest",
            "upper/nothing/15/cingulum/rest",
            "lower/rest-seat/35/cingulum/whim")) {
      assertThat(PreparationKey.parse(wrong)).as(wrong).isEmpty();
    }
  }

  @Test
  void the_list_reads_as_plain_text() {
    assertThat(plan(noted(seatOn35(), cut())).toText())
        .isEqualTo(
            """
            Mouth preparations, in the order in which they are done; teeth by ISO 3950 (FDI).

            Guide planes
              1  35 distal: planned
                 flat plane 3–4 mm high, a third of the width of the tooth, parallel to the path of insertion
                 for: guide plate (no. 2)

            Rest seats and clearance
              2  35 distal occlusal: done on 3 November 2026 by A. B.
                 cut a spoon-shaped seat at least 2.5 mm wide and as long, 1–1.5 mm deep at the marginal ridge, deepest inside
                 for: rest (no. 1)
                 caution A, B, C

            Finishing
              3  35: planned
                 round and polish every cut surface, apply fluoride, protect any exposed dentine; check room and path on a study cast before the master impression
                 for: all prepared teeth

            Cautions
              A  Occlusal seats are rounded triangles, half the distance between cusps wide, without a sharp edge; the floor meets the minor connector at less than 90°.
              B  Premolar enamel is about 0.5–0.6 mm thick here, and more than half of the seats in the study reached dentine: 1.5 mm usually cannot be had within enamel, 1.0 mm may be.
              C  Check on softened wax that 1 mm of metal finds room; do not gain it from the buccal cusps of lower teeth.
            """);
    assertThat(plan(Case.blank("x")).toText())
        .isEqualTo("No mouth preparations: the design asks for none.\n");
  }
}
