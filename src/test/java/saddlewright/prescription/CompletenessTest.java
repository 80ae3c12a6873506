package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.PrescriptionDetails;
import saddlewright.dentition.Span;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.UnknownComponent;

class CompletenessTest {
  private static final PrescriptionDetails FILLED =
      new PrescriptionDetails(
          "a", "b", "c", "2026-11-02", "to be agreed", "d", "e", "f", "g", "h", "i", "");

  @Test
  void a_blank_case_lacks_every_field_and_a_design() {
    assertThat(Completeness.missing(Assessment.of(Case.blank(""))))
        .hasSize(13)
        .contains(
            "There is no case reference.",
            "The date required is missing; write \"to be agreed\" if it is.",
            "The shade is missing; write \"to follow\" if it is not yet taken.",
            "Neither arch has a design yet.");
  }

  @Test
  void a_filled_form_with_a_connector_lacks_nothing() {
    Case c = Mouths.lowerMissing(36).with(FILLED);
    c =
        c.with(
            c.lowerDesign()
                .plus(
                    MajorConnector.of(
                        ComponentId.of("c"), ConnectorForm.LINGUAL_BAR, Span.of(45, 35))));
    assertThat(Completeness.missing(Assessment.of(c))).isEmpty();
  }

  @Test
  void a_design_without_connector_or_with_unknown_parts_is_named() {
    Case c = Mouths.lowerMissing(36).with(FILLED);
    c = c.with(c.lowerDesign().plus(new UnknownComponent(ComponentId.of("u"), "x", "{}")));
    assertThat(Completeness.missing(Assessment.of(c)))
        .containsExactly(
            "The lower design has no major connector.",
            "The lower design holds a component of a kind that is not known here.");
  }
}
