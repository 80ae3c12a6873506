package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;
import saddlewright.casefile.order.Signature;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.UnknownComponent;

class CompletenessTest {

  private static List<String> missing(Case c) {
    return Completeness.of(Assessment.of(c), Optional.empty()).gaps(Level.MUST).stream()
        .map(Completeness.Gap::sentence)
        .toList();
  }

  /** Every field that can be answered is, and the stages have a date. */
  private static PrescriptionDetails filled() {
    PrescriptionDetails p = PrescriptionDetails.EMPTY;
    for (Item item : Item.values()) {
      p = p.with(item, "x");
    }
    return p.with(
        StagePlan.EMPTY
            .withRequested(Optional.of(TreatmentStage.FRAMEWORK))
            .withFitting(Optional.of(LocalDate.of(2026, 12, 18))));
  }

  private static Case designed() {
    Case c = Mouths.lowerMissing(36).with(filled());
    return c.with(
        c.lowerDesign()
            .plus(
                MajorConnector.of(
                    ComponentId.of("c"), ConnectorForm.LINGUAL_BAR, Span.of(45, 35))));
  }

  /** The thirty-four fields of the published forms and laws that the table cites. */
  @Test
  void the_form_has_thirty_four_fields_each_with_a_source() {
    assertThat(FormField.ALL.stream().map(FormField::number).distinct())
        .containsExactlyElementsOf(IntStream.rangeClosed(1, 34).boxed().toList());
    assertThat(FormField.ALL).allSatisfy(f -> assertThat(f.source()).isNotBlank());
    assertThat(FormField.ALL.stream().flatMap(f -> f.item().stream()))
        .containsExactlyInAnyOrder(Item.values());
  }

  @Test
  void a_blank_case_lacks_names_dates_materials_and_a_design() {
    assertThat(missing(Case.blank("")))
        .contains(
            "There is no case reference.",
            "Prescriber: not filled in.",
            "Date and time required: not filled in.",
            "Tooth shade: not filled in.",
            "It is not said which stage is asked for now.",
            "Neither arch has a design yet.");
  }

  @Test
  void only_the_audited_variables_are_missing_from_a_bare_connector() {
    assertThat(missing(designed()))
        .containsExactly(
            "The lower design has no saddle.",
            "The lower design has no support: no rest is designed.",
            "The lower design has no retention: no clasp is designed.");
  }

  @Test
  void a_part_of_an_unknown_kind_is_named() {
    Case c = designed();
    c = c.with(c.lowerDesign().plus(new UnknownComponent(ComponentId.of("u"), "x", "{}")));
    assertThat(missing(c))
        .contains("The lower design holds a component of a kind that is not known here.");
  }

  @Test
  void none_and_not_applicable_are_answers_and_to_follow_is_one_with_a_day() {
    PrescriptionDetails p = filled();
    for (Answer a : List.of(Answer.NONE, Answer.NOT_APPLICABLE)) {
      assertThat(missing(designed().with(p.with(Item.TOOTH_SHADE, a)))).hasSize(3);
    }
    assertThat(
            missing(
                designed()
                    .with(
                        p.with(
                            Item.TOOTH_SHADE,
                            Answer.toFollow(Optional.of(LocalDate.of(2026, 12, 1)))))))
        .hasSize(3);
    assertThat(
            missing(designed().with(p.with(Item.TOOTH_SHADE, Answer.toFollow(Optional.empty())))))
        .contains("Tooth shade: to follow, but it is not said by when.");
  }

  /** UK statement of manufacture names the patient: GDC10, MDD8; the EU accepts a code. */
  @Test
  void only_the_united_kingdom_demands_the_name_of_the_patient() {
    for (Regime regime : Regime.values()) {
      Case c = designed().with(filled().withRegime(regime));
      assertThat(missing(c).contains("The patient is not named."))
          .as(regime.title())
          .isEqualTo(regime == Regime.UK);
    }
    Case uk = designed().with(filled().withRegime(Regime.UK));
    PatientIdentity named = new PatientIdentity("R", "N.", Optional.empty(), "");
    assertThat(Completeness.of(Assessment.of(uk), Optional.of(named)).gaps(Level.MUST))
        .extracting(Completeness.Gap::sentence)
        .doesNotContain("The patient is not named.");
  }

  /** Coursework relaxes people, shade, enclosures and signature, and asks for a number. */
  @Test
  void coursework_asks_for_the_design_and_a_candidate_number_only() {
    Case c = Mouths.lowerMissing(36).with(PrescriptionDetails.EMPTY);
    c = c.with(c.prescription().withKind(DocumentKind.COURSEWORK));
    assertThat(missing(c))
        .containsExactly(
            "There is no candidate number.",
            "Type of denture: not filled in.",
            "Neither arch has a design yet.",
            "Framework material and type: not filled in.");
  }

  @Test
  void a_signature_stands_for_the_design_that_was_signed_and_no_other() {
    Case c = designed();
    Signature s =
        new Signature(
            Signature.Manner.ELECTRONIC,
            "A. Wainfleet",
            "TC-0417",
            LocalDate.of(2026, 11, 2),
            Fingerprint.ofDesign(c));
    Case signed = c.with(c.prescription().withSignature(Optional.of(s)));
    assertThat(missing(signed)).hasSize(3);
    Case renamed = signed.with(signed.prescription().with(Item.TOOTH_SHADE, "B2"));
    assertThat(missing(renamed)).hasSize(3);
    Case changed = signed.with(signed.lowerDesign().without(ComponentId.of("c")));
    assertThat(missing(changed))
        .contains("The design has changed since it was signed: sign it again.");
  }

  @Test
  void the_date_required_and_the_stage_plan_cannot_say_different_days() {
    PrescriptionDetails p = filled().with(Item.DATE_REQUIRED, "2026-12-01, 14:00");
    StagePlan plan =
        StagePlan.EMPTY
            .withRequested(Optional.of(TreatmentStage.FRAMEWORK))
            .with(
                TreatmentStage.FRAMEWORK,
                PlannedStage.OPEN.withDue(Optional.of(LocalDate.of(2026, 12, 1))));
    assertThat(missing(designed().with(p.with(plan)))).hasSize(3);
    StagePlan later =
        plan.with(
            TreatmentStage.FRAMEWORK,
            PlannedStage.OPEN.withDue(Optional.of(LocalDate.of(2026, 12, 4))));
    assertThat(missing(designed().with(p.with(later))))
        .contains(
            "The date required is 1 December 2026, but the stage plan comes to 4 December 2026 for"
                + " the stage requested.");
  }

  /** Clear rest seats stood on 16.7 % of casts (RIY20); none were cut on 66 % (LIS23). */
  @Test
  void a_framework_is_not_ordered_before_every_preparation_is_settled() {
    Case c = designed();
    c =
        c.with(
            c.lowerDesign()
                .plus(Rest.of(ComponentId.of("r"), Tooth.of(35), RestSite.DISTAL_OCCLUSAL)));
    assertThat(missing(c)).anyMatch(s -> s.endsWith("neither checked nor declined with a reason."));
    Preparations all = c.prescription().preparations();
    for (PreparationPlan.Entry e : PreparationPlan.of(Assessment.of(c), Notation.FDI).unsettled()) {
      all = all.with(PreparationMark.planned(e.key()).withState(PreparationMark.State.CHECKED));
    }
    assertThat(missing(c.with(c.prescription().with(all))))
        .noneMatch(s -> s.contains("neither checked"));
    Case earlier =
        c.with(
            c.prescription()
                .with(
                    c.prescription()
                        .stages()
                        .withRequested(Optional.of(TreatmentStage.SPECIAL_TRAY))));
    assertThat(missing(earlier)).noneMatch(s -> s.contains("neither checked"));
  }
}
