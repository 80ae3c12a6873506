package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import saddlewright.casefile.Case;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;

class CaseCodecTest {

  private static final Case SMALL = small();

  private static Case small() {
    Case blank = Case.blank("R-1").withIdentity("R-1", "Lower left molar", "");
    return blank
        .with(
            blank
                .chart(Arch.LOWER)
                .with(Tooth.T36, ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED)))
        .with(
            blank
                .design(Arch.LOWER)
                .plus(Rest.of(ComponentId.of("rest-1"), Tooth.T34, RestSite.MESIAL_OCCLUSAL)));
  }

  @Test
  void a_case_reads_like_a_form_and_names_only_what_was_found() {
    assertThat(CaseCodec.toJson(SMALL))
        .isEqualTo(
            """
            {
              "format": "saddlewright-case",
              "formatVersion": 2,
              "reference": "R-1",
              "title": "Lower left molar",
              "profile": "uk-teaching",
              "lower": {
                "teeth": {
                  "36": {
                    "status": "missing",
                    "gap": "replaced"
                  }
                },
                "design": {
                  "components": [
                    {
                      "id": "rest-1",
                      "kind": "rest",
                      "tooth": 34,
                      "site": "mesial-occlusal",
                      "form": "standard",
                      "seat": "prepared-enamel"
                    }
                  ]
                }
              }
            }
            """);
  }

  @Test
  void what_was_written_is_read_again() throws Exception {
    assertThat(CaseCodec.fromJson(CaseCodec.toJson(SMALL), "small.json")).isEqualTo(SMALL);
  }

  @Test
  void a_byte_order_mark_in_front_does_no_harm() throws Exception {
    assertThat(CaseCodec.fromJson("\uFEFF" + CaseCodec.toJson(SMALL), "s.json")).isEqualTo(SMALL);
  }
}
