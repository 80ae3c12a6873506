package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Signature;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/**
 * Order and gates as in student stage guides, a school's protocol and a clinic's standard (read),
 * each named with its gate; days are the user's own.
 */
class TimetableTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 10, 1);

  /** A Monday. */
  private static final LocalDate FITTING = LocalDate.of(2026, 11, 2);

  private static final String SEAT = "lower/rest-seat/35/distal-occlusal/rest";
  private static final String FINISH = "lower/finish/-/-/cut-surfaces";

  private static Case designed() {
    Case c = Mouths.lowerMissing(36);
    return c.with(
        c.lowerDesign().plus(Rest.of(ComponentId.of("r"), Tooth.T35, RestSite.DISTAL_OCCLUSAL)));
  }

  private static Case planned(Case c, UnaryOperator<StagePlan> change) {
    return c.with(c.prescription().with(change.apply(c.prescription().stages())));
  }

  private static Case days(Case c, TreatmentStage stage, int days) {
    return planned(c, p -> p.with(stage, p.at(stage).withDays(Optional.of(days))));
  }

  private static Case done(Case c, TreatmentStage stage, LocalDate day) {
    return planned(c, p -> p.with(stage, p.at(stage).withDone(Optional.of(day), "")));
  }

  private static Case signed(Case c, LocalDate on) {
    return c.with(
        c.prescription()
            .withSignature(
                Optional.of(
                    new Signature(
                        Signature.Manner.ELECTRONIC, "A. B.", "", on, Fingerprint.ofDesign(c)))));
  }

  private static Case noted(Case c, String key, UnaryOperator<PreparationMark> change) {
    PreparationMark mark = c.prescription().preparations().mark(key);
    return c.with(c.prescription().with(c.prescription().preparations().with(change.apply(mark))));
  }

  private static Case checked(Case c) {
    Case out = c;
    for (String key : List.of(SEAT, FINISH)) {
      out =
          noted(
              out,
              key,
              m ->
                  m.withState(PreparationMark.State.CHECKED)
                      .withOn(Optional.of(TODAY))
                      .withCheckedBy("C. D."));
    }
    return out;
  }

  private static Timetable of(Case c) {
    return Timetable.of(Assessment.of(c), Notation.FDI, TODAY);
  }

  private static Optional<LocalDate> due(Case c, TreatmentStage stage) {
    return of(c).at(stage).due();
  }

  private static List<String> gates(Case c, TreatmentStage stage) {
    return of(c).at(stage).gates().stream().map(Gate::words).toList();
  }

  /** Calendar: 2 November 2026 is a Monday; five working days before it is Monday 26 October. */
  @Test
  void days_are_counted_back_from_the_fitting() {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING)));
    c =
        days(
            days(days(c, TreatmentStage.FINISH, 5), TreatmentStage.TOOTH_TRY_IN, 0),
            TreatmentStage.SETTING_UP,
            3);
    assertThat(due(c, TreatmentStage.DELIVERY)).contains(FITTING);
    assertThat(due(c, TreatmentStage.FINISH)).contains(FITTING);
    assertThat(due(c, TreatmentStage.TOOTH_TRY_IN)).contains(LocalDate.of(2026, 10, 26));
    assertThat(due(c, TreatmentStage.SETTING_UP)).contains(LocalDate.of(2026, 10, 26));
    assertThat(due(c, TreatmentStage.FRAMEWORK_REGISTRATION)).isEmpty();
    c = days(c, TreatmentStage.FRAMEWORK_REGISTRATION, 1);
    assertThat(due(c, TreatmentStage.FRAMEWORK_REGISTRATION)).contains(LocalDate.of(2026, 10, 20));
    assertThat(due(c, TreatmentStage.RIMS_ON_FRAMEWORK)).contains(LocalDate.of(2026, 10, 20));
    assertThat(due(c, TreatmentStage.FRAMEWORK_TRY_IN)).isEmpty();
  }

  /** Calendar: back from Monday 2 November 2026; the 31st and the 1st are the weekend. */
  @ParameterizedTest
  @CsvSource({
    "false, 1, 2026-10-30",
    "false, 0, 2026-11-02",
    "false, 6, 2026-10-23",
    "true, 1, 2026-11-01",
    "true, 6, 2026-10-27"
  })
  void weekends_count_only_when_told_so(boolean everyDay, int count, LocalDate expected) {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING)).withEveryDay(everyDay));
    c = days(c, TreatmentStage.TOOTH_TRY_IN, 0);
    assertThat(due(days(c, TreatmentStage.FINISH, count), TreatmentStage.TOOTH_TRY_IN))
        .contains(expected);
  }

  @Test
  void a_day_set_by_hand_holds_and_the_earlier_ones_count_from_it() {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING)));
    c = days(days(c, TreatmentStage.FINISH, 5), TreatmentStage.TOOTH_TRY_IN, 1);
    LocalDate byHand = LocalDate.of(2026, 10, 20);
    c =
        planned(
            c,
            p ->
                p.with(
                    TreatmentStage.TOOTH_TRY_IN,
                    p.at(TreatmentStage.TOOTH_TRY_IN).withDue(Optional.of(byHand))));
    assertThat(due(c, TreatmentStage.TOOTH_TRY_IN)).contains(byHand);
    assertThat(due(c, TreatmentStage.SETTING_UP)).contains(byHand);
    c = days(days(c, TreatmentStage.SETTING_UP, 1), TreatmentStage.FRAMEWORK_REGISTRATION, 0);
    assertThat(due(c, TreatmentStage.FRAMEWORK_REGISTRATION)).contains(LocalDate.of(2026, 10, 19));
  }

  @Test
  void a_stage_that_is_left_out_takes_no_days_and_has_no_date() {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING)));
    c = days(days(c, TreatmentStage.FINISH, 5), TreatmentStage.TOOTH_TRY_IN, 4);
    c =
        planned(
            c,
            p ->
                p.with(
                    TreatmentStage.TOOTH_TRY_IN,
                    p.at(TreatmentStage.TOOTH_TRY_IN).withLeftOut(true)));
    assertThat(of(c).at(TreatmentStage.TOOTH_TRY_IN).state()).isEqualTo(Timetable.State.LEFT_OUT);
    assertThat(due(c, TreatmentStage.TOOTH_TRY_IN)).isEmpty();
    assertThat(due(c, TreatmentStage.SETTING_UP)).contains(LocalDate.of(2026, 10, 26));
  }

  /** No general turn-round times were found in any source, so none are assumed. */
  @Test
  void days_that_are_not_set_are_asked_for_and_never_assumed() {
    assertThat(of(designed()).wanting())
        .contains("Set the day of the fitting, from which the others are counted back.");
    Case c = designed();
    for (TreatmentStage s : TreatmentStage.values()) {
      if (s.compareTo(TreatmentStage.FRAMEWORK_REGISTRATION) < 0) {
        c = done(c, s, TODAY);
      }
    }
    c = planned(c, p -> p.withFitting(Optional.of(FITTING)));
    assertThat(of(c).wanting())
        .contains(
            "Set the days for: registration on the framework; teeth set up; tooth try-in; processing"
                + " and finishing.");
    for (TreatmentStage s :
        List.of(
            TreatmentStage.FRAMEWORK_REGISTRATION,
            TreatmentStage.SETTING_UP,
            TreatmentStage.TOOTH_TRY_IN,
            TreatmentStage.FINISH)) {
      c = days(c, s, 2);
    }
    assertThat(of(c).wanting()).isEmpty();
  }

  @Test
  void the_review_is_counted_on_from_the_fitting() {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING)));
    assertThat(due(days(c, TreatmentStage.DELIVERY, 5), TreatmentStage.REVIEW))
        .contains(LocalDate.of(2026, 11, 9));
  }

  @Test
  void a_stage_past_its_day_is_overdue_until_it_is_done() {
    Case c =
        planned(
            designed(),
            p ->
                p.with(
                    TreatmentStage.PRIMARY_IMPRESSION,
                    PlannedStage.OPEN.withDue(Optional.of(TODAY.minusDays(1)))));
    assertThat(of(c).at(TreatmentStage.PRIMARY_IMPRESSION).state())
        .isEqualTo(Timetable.State.OVERDUE);
    Case due =
        planned(
            designed(),
            p ->
                p.with(
                    TreatmentStage.PRIMARY_IMPRESSION,
                    PlannedStage.OPEN.withDue(Optional.of(TODAY))));
    assertThat(of(due).at(TreatmentStage.PRIMARY_IMPRESSION).state())
        .isEqualTo(Timetable.State.NEXT);
    assertThat(
            of(done(c, TreatmentStage.PRIMARY_IMPRESSION, TODAY))
                .at(TreatmentStage.PRIMARY_IMPRESSION)
                .state())
        .isEqualTo(Timetable.State.DONE);
  }

  @Test
  void the_first_open_stage_is_next() {
    Timetable t = of(done(designed(), TreatmentStage.PRIMARY_IMPRESSION, TODAY));
    assertThat(t.at(TreatmentStage.SPECIAL_TRAY).state()).isEqualTo(Timetable.State.NEXT);
    assertThat(t.at(TreatmentStage.REGISTRATION).state()).isEqualTo(Timetable.State.OPEN);
  }

  /** A school's protocol: no tooth is altered before the design form is signed. */
  @Test
  void no_tooth_is_altered_before_the_design_is_signed() {
    assertThat(gates(designed(), TreatmentStage.MOUTH_PREPARATION))
        .contains("The design is not signed. Have it signed.");
    assertThat(of(designed()).at(TreatmentStage.MOUTH_PREPARATION).state())
        .isEqualTo(Timetable.State.CLOSED);
    assertThat(of(signed(designed(), TODAY)).at(TreatmentStage.MOUTH_PREPARATION).isClosed())
        .isFalse();
  }

  @Test
  void a_design_that_has_changed_since_has_to_be_signed_again() {
    Case c = signed(designed(), TODAY);
    Case changed =
        c.with(
            c.lowerDesign()
                .plus(Rest.of(ComponentId.of("s"), Tooth.T37, RestSite.MESIAL_OCCLUSAL)));
    assertThat(gates(changed, TreatmentStage.MOUTH_PREPARATION))
        .contains(
            "The chart or the design has changed since A. B. signed it on 1 October 2026. Have it"
                + " looked at and signed again.");
    Case renamed = c.withIdentity("T-2", "another title", "");
    assertThat(of(renamed).at(TreatmentStage.MOUTH_PREPARATION).isClosed()).isFalse();
  }

  /** Stage guides: agree with the patient after the design and before the teeth are cut. */
  @Test
  void the_patients_agreement_is_asked_for_and_closes_nothing() {
    Case c = signed(designed(), TODAY);
    assertThat(gates(c, TreatmentStage.MOUTH_PREPARATION))
        .containsExactly("The patient's agreement to the design is not noted.");
    assertThat(gates(done(c, TreatmentStage.CONSENT, TODAY), TreatmentStage.MOUTH_PREPARATION))
        .isEmpty();
  }

  /** A clinic's standard: preparations are checked before the final impression. */
  @Test
  void preparations_are_checked_or_declined_before_the_master_impression() {
    Case c = signed(designed(), TODAY);
    assertThat(gates(c, TreatmentStage.MASTER_IMPRESSION))
        .containsExactly(
            "2 preparations are not checked: 35 distal occlusal, finishing. Check each, or decline"
                + " it with the reason.");
    assertThat(of(c).at(TreatmentStage.FRAMEWORK).isClosed()).isTrue();
    assertThat(gates(checked(c), TreatmentStage.MASTER_IMPRESSION)).isEmpty();
    assertThat(of(checked(c)).at(TreatmentStage.FRAMEWORK).isClosed()).isFalse();
    Case declined =
        noted(checked(c), SEAT, m -> m.withState(PreparationMark.State.DECLINED).withNote(""));
    assertThat(of(declined).at(TreatmentStage.MASTER_IMPRESSION).isClosed()).isTrue();
    Case reasoned = noted(declined, SEAT, m -> m.withNote("patient refuses"));
    assertThat(of(reasoned).at(TreatmentStage.MASTER_IMPRESSION).isClosed()).isFalse();
  }

  @Test
  void what_was_cut_before_the_signature_is_reported_and_still_listed() {
    UnaryOperator<PreparationMark> cut =
        m -> m.withState(PreparationMark.State.DONE).withOn(Optional.of(TODAY.minusDays(3)));
    Case unsigned = noted(designed(), SEAT, cut);
    assertThat(of(unsigned).remarks())
        .containsExactly(
            "35 distal occlusal was altered on 28 September 2026, but the design is not signed.");
    assertThat(of(signed(unsigned, TODAY)).remarks())
        .containsExactly(
            "35 distal occlusal was altered on 28 September 2026, before the design was signed on 1"
                + " October 2026.");
    assertThat(of(signed(unsigned, TODAY.minusDays(4))).remarks()).isEmpty();
    Case undated = noted(unsigned, SEAT, m -> m.withOn(Optional.empty()));
    assertThat(of(signed(undated, TODAY)).remarks())
        .containsExactly(
            "35 distal occlusal was altered without a date: whether the design was signed before"
                + " cannot be told.");
  }

  @Test
  void what_was_cut_after_the_master_impression_is_not_on_its_cast() {
    Case c = checked(signed(designed(), TODAY.minusDays(30)));
    c = done(c, TreatmentStage.MASTER_IMPRESSION, TODAY.minusDays(2));
    assertThat(of(c).remarks())
        .containsExactly(
            "35 distal occlusal was altered on 1 October 2026, after the master impression of 29"
                + " September 2026: the cast shows it as it was.");
  }

  @Test
  void a_master_impression_of_unchecked_preparations_is_reported() {
    Case c = done(signed(designed(), TODAY.minusDays(30)), TreatmentStage.MASTER_IMPRESSION, TODAY);
    assertThat(of(c).remarks())
        .containsExactly(
            "“Master impressions” is noted as done on 1 October 2026 although 2 preparations are not"
                + " checked: 35 distal occlusal, finishing.");
  }

  @Test
  void stages_dated_out_of_order_or_ahead_are_reported() {
    Case c = done(designed(), TreatmentStage.PRIMARY_IMPRESSION, TODAY);
    c = done(c, TreatmentStage.REGISTRATION, TODAY.minusDays(7));
    assertThat(of(c).remarks())
        .containsExactly(
            "“Jaw registration” is dated 24 September 2026, before “Primary impressions” on 1 October"
                + " 2026.");
    assertThat(of(done(designed(), TreatmentStage.PRIMARY_IMPRESSION, TODAY.plusDays(1))).remarks())
        .containsExactly(
            "“Primary impressions” is noted as done on 2 October 2026, which is still to come.");
  }

  @Test
  void a_fitting_at_the_weekend_is_remarked() {
    Case c = planned(designed(), p -> p.withFitting(Optional.of(FITTING.minusDays(1))));
    assertThat(of(c).remarks())
        .containsExactly(
            "The fitting on Sunday 1 November 2026 falls on a day that is not counted as a working"
                + " day.");
    assertThat(of(planned(c, p -> p.withEveryDay(true))).remarks()).isEmpty();
  }

  /** Dental Update 2018;45: some stages may not be possible for immediate replacements. */
  @Test
  void an_immediate_tooth_cannot_be_tried_in() {
    Case c = designed();
    c =
        c.with(
            c.lowerChart()
                .with(
                    Tooth.T44,
                    c.lowerChart().tooth(Tooth.T44).withStatus(ToothStatus.TO_BE_EXTRACTED)));
    c = c.with(c.lowerDesign().plus(Saddle.of(ComponentId.of("i"), Span.of(44, 44))));
    assertThat(gates(c, TreatmentStage.TOOTH_TRY_IN))
        .containsExactly(
            "The replacement of 44 cannot be tried in while the natural tooth stands: give the"
                + " laboratory shade, mould and position beforehand.");
    assertThat(of(c).at(TreatmentStage.TOOTH_TRY_IN).isClosed()).isFalse();
    assertThat(gates(designed(), TreatmentStage.TOOTH_TRY_IN)).isEmpty();
  }

  @Test
  void the_timetable_reads_as_plain_text() {
    Case c = planned(signed(designed(), TODAY), p -> p.withFitting(Optional.of(FITTING)));
    c = days(days(c, TreatmentStage.FINISH, 5), TreatmentStage.TOOTH_TRY_IN, 0);
    c = done(c, TreatmentStage.PRIMARY_IMPRESSION, LocalDate.of(2026, 9, 7));
    assertThat(of(c).toText())
        .isEqualTo(
            """
            Stages as on 1 October 2026; fitting on Monday 2 November 2026; Monday to Friday count.

                      Stage                                              Where      Days  Due                    Done
            done      Primary impressions                                clinic        –  –                      Mon 7 Sept 2026
            next      Special trays and rims                             laboratory    –  –                      –
            open      Jaw registration                                   clinic        –  –                      –
            open      Mounting, survey and design; the design is signed  clinic        –  –                      –
            open      Design agreed with the patient                     clinic        –  –                      –
            open      Mouth preparations                                 clinic        –  –                      –
                      note: The patient's agreement to the design is not noted.
            waits     Master impressions                                 clinic        –  –                      –
                      closed: 2 preparations are not checked: 35 distal occlusal, finishing. Check each, or decline it with the reason.
            waits     Framework made                                     laboratory    –  –                      –
                      closed: 2 preparations are not checked: 35 distal occlusal, finishing. Check each, or decline it with the reason.
            open      Framework try-in                                   clinic        –  –                      –
            open      Rims on the framework                              laboratory    –  –                      –
            open      Registration on the framework                      clinic        –  –                      –
            open      Teeth set up                                       laboratory    –  Mon 26 Oct 2026        –
            open      Tooth try-in                                       clinic        0  Mon 26 Oct 2026        –
            open      Processing and finishing                           laboratory    5  Mon 2 Nov 2026         –
            open      Fitting                                            clinic        –  Mon 2 Nov 2026         –
            open      Review                                             clinic        –  –                      –

            Set the days for: jaw registration; mounting, survey and design; design agreed with the patient; mouth preparations; master impressions; framework made; framework try-in; rims on the framework; registration on the framework; teeth set up.
            """);
  }

  /** The plan of a demo case agrees with the day that its form asks for. */
  @Test
  void the_framework_of_a_demo_case_is_due_when_its_form_asks_for_it() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    Timetable t = Timetable.of(Assessment.of(c), Notation.FDI, LocalDate.of(2026, 11, 2));
    assertThat(c.prescription().text(Item.DATE_REQUIRED)).startsWith("2026-11-23");
    assertThat(t.at(TreatmentStage.FRAMEWORK).due()).contains(LocalDate.of(2026, 11, 23));
    assertThat(t.at(TreatmentStage.FRAMEWORK).state()).isEqualTo(Timetable.State.NEXT);
    assertThat(t.remarks()).isEmpty();
  }
}
