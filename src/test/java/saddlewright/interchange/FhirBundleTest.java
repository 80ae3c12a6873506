package saddlewright.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.Preparations;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Signature;
import saddlewright.dentition.Notation;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.pdf.PrescriptionPdf;

/** What a bundle says, read as plain JSON; that it is lawful R4 is for {@code R4ConformityTest}. */
class FhirBundleTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @MethodSource("saddlewright.interchange.FilledIn#demoCases")
  void says_every_component_preparation_and_missing_tooth_of_a_demo_case(Path file)
      throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    JsonNode tree = JSON.readTree(FhirBundle.toBytes(a, DAY));
    List<String> parameters =
        resources(tree, "DeviceRequest").stream()
            .flatMap(r -> list(r.path("parameter")))
            .map(p -> p.path("valueCodeableConcept").path("text").asText())
            .toList();
    assertThat(parameters)
        .containsAll(
            Schedule.of(a, Notation.FDI).lines().stream()
                .map(l -> l.place() + ": " + l.text())
                .toList());
    assertThat(resources(tree, "ServiceRequest"))
        .extracting(
            r -> r.path("orderDetail").path(r.path("orderDetail").size() - 1).path("text").asText())
        .containsExactlyElementsOf(
            PreparationPlan.of(a, Notation.FDI).entries().stream()
                .map(PreparationPlan.Entry::target)
                .toList());
    Set<String> told =
        resources(tree, "BodyStructure").stream()
            .map(r -> r.path("location").path("coding").path(0).path("code").asText())
            .collect(Collectors.toCollection(TreeSet::new));
    Stream.of(a.upper(), a.lower())
        .flatMap(s -> s.chart().where(s.chart()::isLost).stream())
        .forEach(t -> assertThat(told).contains(t.toString()));
  }

  @ParameterizedTest
  @MethodSource("saddlewright.interchange.FilledIn#demoCases")
  void refers_to_nothing_outside_of_itself(Path file) throws Exception {
    JsonNode tree = JSON.readTree(bundle(CaseStore.load(file)));
    List<String> names = list(tree.path("entry")).map(e -> e.path("fullUrl").asText()).toList();
    assertThat(names).doesNotHaveDuplicates();
    List<String> references = tree.findValuesAsText("reference");
    assertThat(references).isNotEmpty().isSubsetOf(names);
  }

  @Test
  void an_order_is_active_only_when_issued_and_signed_as_it_stands() throws Exception {
    assertThat(statuses(FilledIn.order(), "DeviceRequest")).containsExactly("active");
    Case draft = FilledIn.draft();
    assertThat(statuses(draft, "DeviceRequest")).containsExactly("draft");
    PrescriptionDetails d = draft.prescription();
    Case unsigned = draft.with(d.withSignature(Optional.empty()));
    assertThat(statuses(FilledIn.issued(unsigned), "DeviceRequest")).containsExactly("draft");
    Signature other =
        new Signature(Signature.Manner.ELECTRONIC, "R. Quill", "", DAY, "0123456789abcdef");
    Case otherwise = draft.with(d.withSignature(Optional.of(other)));
    assertThat(statuses(FilledIn.issued(otherwise), "DeviceRequest")).containsExactly("draft");
  }

  @Test
  void says_what_must_still_be_filled_in() throws Exception {
    Case c = FilledIn.draft();
    Case blank = c.with(c.prescription().with(Item.TOOTH_SHADE, Answer.BLANK));
    JsonNode request = resources(JSON.readTree(bundle(blank)), "DeviceRequest").get(0);
    assertThat(request.path("note").toString())
        .contains("Not yet complete: Tooth shade: not filled in.");
  }

  /** No tooth is altered before the design is signed (school protocol: see the stage gates). */
  @Test
  void preparations_are_drafts_until_the_design_is_signed() throws Exception {
    Case signed = FilledIn.order().with(FilledIn.order().prescription().with(Preparations.NONE));
    assertThat(statuses(signed, "ServiceRequest")).isNotEmpty().containsOnly("active");
    assertThat(
            statuses(
                signed.with(signed.prescription().withSignature(Optional.empty())),
                "ServiceRequest"))
        .isNotEmpty()
        .containsOnly("draft");
  }

  @Test
  void a_preparation_says_how_far_it_is() throws Exception {
    JsonNode tree = JSON.readTree(bundle(FilledIn.order()));
    List<JsonNode> requests = resources(tree, "ServiceRequest");
    List<JsonNode> declined =
        requests.stream().filter(r -> r.path("status").asText().equals("revoked")).toList();
    assertThat(declined).hasSize(1);
    assertThat(declined.get(0).path("note").toString()).contains("the patient declines");
    List<JsonNode> done =
        requests.stream().filter(r -> r.path("status").asText().equals("completed")).toList();
    assertThat(done).hasSize(requests.size() - 1);
    assertThat(done)
        .extracting(r -> r.at("/identifier/0/value").asText())
        .contains(
            FilledIn.order().reference() + "/own/crown",
            FilledIn.order().reference() + "/" + FilledIn.FORMER);
    List<JsonNode> procedures = resources(tree, "Procedure");
    assertThat(procedures)
        .hasSameSizeAs(done)
        .allSatisfy(
            p -> {
              assertThat(p.path("performedDateTime").asText()).isEqualTo("2026-03-02");
              assertThat(p.at("/performer/0/actor/display").asText()).isEqualTo("R. Quill");
            });
  }

  @Test
  void the_stage_that_is_asked_for_is_requested_once_nothing_bars_it() throws Exception {
    JsonNode asked = stage(FilledIn.order(), "framework");
    assertThat(asked.path("status").asText()).isEqualTo("requested");
    assertThat(asked.path("intent").asText()).isEqualTo("order");
    assertThat(asked.at("/restriction/period/end").asText()).isEqualTo("2026-04-01");
    assertThat(asked.path("note").toString()).contains("09:30");
    Case open = FilledIn.draft().with(FilledIn.draft().prescription().with(Preparations.NONE));
    JsonNode barred = stage(FilledIn.issued(open), "framework");
    assertThat(barred.path("status").asText()).isEqualTo("draft");
    assertThat(barred.path("intent").asText()).isEqualTo("plan");
    assertThat(barred.at("/statusReason/text").asText()).contains("not checked");
    assertThat(stage(FilledIn.order(), "primary-impression").path("status").asText())
        .isEqualTo("completed");
    assertThat(stage(FilledIn.order(), "tooth-try-in").path("status").asText())
        .isEqualTo("cancelled");
  }

  @Test
  void names_the_revision_that_it_replaces() throws Exception {
    Case c = FilledIn.order();
    JsonNode request = resources(JSON.readTree(bundle(c)), "DeviceRequest").get(0);
    assertThat(request.path("identifier").path(0).path("value").asText())
        .isEqualTo(c.reference() + "/lower/r3");
    JsonNode prior = request.path("priorRequest").path(0);
    assertThat(prior.path("identifier").path("value").asText())
        .isEqualTo(c.reference() + "/lower/r2");
    assertThat(prior.path("display").asText()).contains("2026-02-11").contains("feedfacefeedface");
  }

  @Test
  void coursework_proposes_and_never_orders() throws Exception {
    Case c =
        FilledIn.order().with(FilledIn.order().prescription().withKind(DocumentKind.COURSEWORK));
    byte[] json = bundle(c);
    JsonNode tree = JSON.readTree(json);
    assertThat(tree.findValuesAsText("intent")).isNotEmpty().containsOnly("proposal");
    assertThat(statuses(c, "DeviceRequest")).containsOnly("draft");
    assertThat(statuses(c, "ServiceRequest")).containsOnly("draft");
    assertThat(resources(tree, "Procedure")).isEmpty();
    assertThat(list(tree.path("entry")).map(e -> e.path("resource")))
        .allSatisfy(
            r ->
                assertThat(r.path("meta").path("security").path(0).path("code").asText())
                    .isEqualTo("HTEST"));
    assertThat(resources(tree, "Task")).isEmpty();
    assertThat(resources(tree, "Provenance")).isEmpty();
    assertThat(tree.findValues("performer")).isEmpty();
    assertThat(resources(tree, "DeviceRequest"))
        .allSatisfy(
            r -> assertThat(r.path("text").path("div").asText()).contains("not a prescription"));
  }

  @Test
  void sealed_coursework_holds_no_case_file() throws Exception {
    PrescriptionDetails d = FilledIn.order().prescription().withKind(DocumentKind.COURSEWORK);
    Case c = FilledIn.order().with(d.with(d.coursework().withSealed(true)));
    assertThat(contentTypes(c)).containsExactly("application/pdf");
    assertThat(contentTypes(FilledIn.order()))
        .containsExactly("application/pdf", "application/json");
  }

  @Test
  void tells_no_name_that_was_not_handed_in() throws Exception {
    Case c = FilledIn.order();
    JsonNode patient = resources(JSON.readTree(bundle(c)), "Patient").get(0);
    assertThat(fieldNames(patient))
        .containsExactlyInAnyOrder("resourceType", "id", "text", "identifier");
    assertThat(patient.path("identifier")).hasSize(1);
    PatientIdentity of = new PatientIdentity(c.reference(), "Ada", Optional.empty(), "");
    assertThat(
            resources(
                    JSON.readTree(FhirBundle.toBytes(Assessment.of(c), DAY, Optional.of(of))),
                    "Patient")
                .get(0)
                .path("name")
                .path(0)
                .path("text")
                .asText())
        .isEqualTo("Ada");
  }

  @Test
  void refuses_the_identity_of_another_case() throws Exception {
    Assessment a = Assessment.of(FilledIn.order());
    PatientIdentity other = new PatientIdentity("X-1", "Ada", Optional.empty(), "");
    assertThatThrownBy(() -> FhirBundle.toBytes(a, DAY, Optional.of(other)))
        .hasMessageContaining("X-1");
  }

  @Test
  void attaches_the_document_and_the_case_whole() throws Exception {
    Case c = FilledIn.order();
    List<JsonNode> attachments =
        resources(JSON.readTree(bundle(c)), "DocumentReference").stream()
            .map(r -> r.path("content").path(0).path("attachment"))
            .toList();
    assertThat(data(attachments.get(0))).isEqualTo(PrescriptionPdf.toBytes(Assessment.of(c), DAY));
    assertThat(CaseCodec.fromBytes(data(attachments.get(1)), "attached")).isEqualTo(c);
    for (JsonNode a : attachments) {
      // HL7 FHIR R4, Attachment: size is of the data before base64; hash is SHA-1 in base64.
      assertThat(a.path("size").asInt()).isEqualTo(data(a).length);
      assertThat(Base64.getDecoder().decode(a.path("hash").asText()))
          .isEqualTo(MessageDigest.getInstance("SHA-1").digest(data(a)));
    }
  }

  @Test
  void the_same_case_and_day_give_the_same_bytes() throws Exception {
    assertThat(bundle(FilledIn.order())).isEqualTo(bundle(FilledIn.order()));
  }

  @Test
  void carries_no_code_of_a_licensed_terminology() throws Exception {
    Set<String> systems = new TreeSet<>();
    for (Path file : FilledIn.demoCases()) {
      systems.addAll(JSON.readTree(bundle(CaseStore.load(file))).findValuesAsText("system"));
    }
    systems.addAll(JSON.readTree(bundle(FilledIn.order())).findValuesAsText("system"));
    assertThat(systems)
        .allMatch(
            s ->
                s.startsWith("https://saddlewright.example/fhir/")
                    || s.startsWith("http://terminology.hl7.org/CodeSystem/")
                    || s.equals("urn:iso-astm:E1762-95:2013")
                    || Set.of("phone", "email", "other").contains(s));
  }

  private static byte[] bundle(Case c) {
    return FhirBundle.toBytes(Assessment.of(c), DAY);
  }

  private static List<String> statuses(Case c, String type) throws Exception {
    return resources(JSON.readTree(bundle(c)), type).stream()
        .map(r -> r.path("status").asText())
        .toList();
  }

  private static JsonNode stage(Case c, String name) throws Exception {
    return resources(JSON.readTree(bundle(c)), "Task").stream()
        .filter(r -> r.at("/identifier/0/value").asText().equals(c.reference() + "/" + name))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> contentTypes(Case c) throws Exception {
    return resources(JSON.readTree(bundle(c)), "DocumentReference").stream()
        .map(r -> r.at("/content/0/attachment/contentType").asText())
        .toList();
  }

  private static byte[] data(JsonNode attachment) {
    return Base64.getDecoder()
        .decode(attachment.path("data").asText().getBytes(StandardCharsets.US_ASCII));
  }

  private static List<JsonNode> resources(JsonNode bundle, String type) {
    return list(bundle.path("entry"))
        .map(e -> e.path("resource"))
        .filter(r -> r.path("resourceType").asText().equals(type))
        .toList();
  }

  private static Stream<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  private static List<String> fieldNames(JsonNode object) {
    List<String> out = new ArrayList<>();
    object.fieldNames().forEachRemaining(out::add);
    return out;
  }
}
