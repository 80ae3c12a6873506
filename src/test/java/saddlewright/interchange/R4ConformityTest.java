package saddlewright.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.ConceptMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Signature;

/** Bundles and code lists against HL7 FHIR R4 (4.0.1), by HL7's validator. */
class R4ConformityTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @MethodSource("saddlewright.interchange.FilledIn#demoCases")
  void the_bundle_of_a_demo_case_obeys_r4(Path file) throws Exception {
    assertThat(R4.objections(bundle(CaseStore.load(file)))).isEmpty();
  }

  @Test
  void a_case_that_is_filled_in_obeys_r4() throws Exception {
    byte[] json =
        FhirBundle.toBytes(
            Assessment.of(FilledIn.order()),
            FilledIn.DAY,
            Optional.of(
                new PatientIdentity(
                    FilledIn.order().reference(),
                    "Ada O’Neill-Świątek",
                    Optional.of(LocalDate.of(1950, 2, 28)),
                    "R 12/7")));
    assertThat(R4.objections(json)).isEmpty();
    Bundle bundle = R4.read(json);
    assertThat(bundle.getEntry())
        .extracting(e -> e.getResource().fhirType())
        .contains(
            "Patient",
            "Practitioner",
            "PractitionerRole",
            "Organization",
            "BodyStructure",
            "AllergyIntolerance",
            "DocumentReference",
            "DeviceRequest",
            "ServiceRequest",
            "Procedure",
            "Task",
            "Provenance");
  }

  @Test
  void words_of_any_origin_do_no_harm() throws Exception {
    PrescriptionDetails d = FilledIn.order().prescription();
    for (String words :
        List.of(
            "</div><script>x</script> & \"quoted\" 'too'",
            "שלום 世界 👩‍⚕️ e\u0301",
            "a\u0000b\u0007c\u001Fd\u0085e",
            "half \uD83D of a character, and \uFFFE",
            "\u00A0",
            "\u200B\u2028",
            "  blanks\t around \r\n and lines\n\n ")) {
      Case c =
          FilledIn.order()
              .with(
                  d.with(Item.SPECIAL_INSTRUCTIONS, words)
                      .with(Item.PRESCRIBER_NAME, words)
                      .with(Item.PRACTICE, words)
                      .with(Item.LABORATORY_NAME, words));
      assertThat(R4.objections(bundle(c))).as(words).isEmpty();
    }
  }

  @Test
  void the_validator_notices_an_unknown_status() throws Exception {
    assertThat(spoilt("DeviceRequest", r -> r.put("status", "nearly")))
        .anyMatch(o -> o.startsWith("ERROR") && o.contains("nearly"));
  }

  @Test
  void the_validator_notices_an_order_for_nobody() throws Exception {
    assertThat(spoilt("DeviceRequest", r -> r.remove("subject")))
        .anyMatch(o -> o.startsWith("ERROR") && o.contains("subject"));
  }

  @Test
  void the_validator_notices_a_code_that_is_in_no_list() throws Exception {
    assertThat(
            spoilt(
                "BodyStructure", r -> ((ObjectNode) r.at("/location/coding/0")).put("code", "99")))
        .anyMatch(o -> o.startsWith("ERROR") && o.contains("99"));
  }

  @Test
  void the_validator_notices_a_member_that_r4_does_not_have() throws Exception {
    assertThat(spoilt("Task", r -> r.put("deadline", "2026-03-02")))
        .anyMatch(o -> o.startsWith("ERROR") && o.contains("deadline"));
  }

  /** HL7, FHIR R4: CodeSystem and ConceptMap. */
  @Test
  void the_published_resources_obey_r4() throws IOException {
    assertThat(R4.objections(Files.readAllBytes(R4.CODES))).isEmpty();
  }

  /**
   * HL7, CodeSystem ex-tooth: quadrant and position, 11 to 48, with 1 to 8 for either of a pair and
   * 0 for the mouth. It is read here as HAPI ships it.
   */
  @Test
  void each_tooth_is_mapped_to_the_tooth_of_hl7s_example() throws IOException {
    Bundle bundle = R4.read(Files.readAllBytes(R4.CODES));
    ConceptMap map =
        bundle.getEntry().stream()
            .map(e -> e.getResource())
            .filter(ConceptMap.class::isInstance)
            .map(ConceptMap.class::cast)
            .findFirst()
            .orElseThrow();
    Set<String> targets = new TreeSet<>();
    map.getGroupFirstRep().getElement().forEach(e -> targets.add(e.getTargetFirstRep().getCode()));
    assertThat(targets)
        .hasSize(32)
        .isSubsetOf(R4.codesOf("http://terminology.hl7.org/CodeSystem/ex-tooth"));
  }

  /** HL7 FHIR R4, data types: a year has four digits. */
  @Test
  void days_that_fhir_cannot_write_are_left_out() throws Exception {
    LocalDate far = LocalDate.of(12_345, 6, 7);
    Case draft = FilledIn.draft();
    PrescriptionDetails d = draft.prescription();
    Case c =
        draft.with(
            d.with(d.stages().withFitting(Optional.of(far)))
                .with(Item.DATE_REQUIRED, far.toString())
                .withSignature(
                    d.signature()
                        .map(
                            s ->
                                new Signature(
                                    s.manner(), s.name(), s.registration(), far, s.designHash()))));
    assertThat(R4.objections(FhirBundle.toBytes(Assessment.of(c), far))).isEmpty();
  }

  @Test
  void a_case_without_a_reference_obeys_r4() throws Exception {
    Case c = FilledIn.draft().withIdentity(" ", "", "");
    assertThat(R4.objections(bundle(c))).isEmpty();
  }

  @Test
  void coursework_and_a_case_without_a_design_obey_r4() throws Exception {
    Case order = FilledIn.order();
    PrescriptionDetails exercise = order.prescription().withKind(DocumentKind.COURSEWORK);
    assertThat(R4.objections(bundle(order.with(exercise)))).isEmpty();
    assertThat(R4.objections(bundle(Case.blank("case-1")))).isEmpty();
  }

  private static List<String> spoilt(String type, Consumer<ObjectNode> spoil) throws Exception {
    JsonNode tree = JSON.readTree(bundle(FilledIn.order()));
    spoil.accept((ObjectNode) first(tree, type));
    return R4.objections(JSON.writeValueAsBytes(tree));
  }

  private static JsonNode first(JsonNode bundle, String type) {
    for (JsonNode entry : bundle.path("entry")) {
      if (entry.path("resource").path("resourceType").asText().equals(type)) {
        return entry.path("resource");
      }
    }
    throw new AssertionError("no " + type);
  }

  private static byte[] bundle(Case c) {
    return FhirBundle.toBytes(Assessment.of(c), FilledIn.DAY);
  }
}
