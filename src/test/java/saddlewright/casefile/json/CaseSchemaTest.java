package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.MinorConnector;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.rules.Profile;
import saddlewright.rules.Source;

/**
 * Holds the published schema, docs/case-schema.json, against what is read and written. The schema
 * is judged by a JSON Schema validator that knows nothing of this program.
 */
class CaseSchemaTest {
  private static final Path SCHEMA_FILE = Path.of("docs/case-schema.json");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNode TREE = tree();
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(TREE);

  private static final JsonSchema STRICT =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(strict());

  /** The schema with a ban on members that it does not describe. */
  private static JsonNode strict() {
    ObjectNode copy = TREE.deepCopy();
    copy.remove("$id");
    JsonNode definitions = copy.path("$defs");
    List<JsonNode> closed = new ArrayList<>(List.of(copy));
    for (String name :
        List.of(
            "toothFindings",
            "undercut",
            "connectorShape",
            "prescription",
            "waiver",
            "namedProfile",
            "ownProfile",
            "limit",
            "weighting")) {
      closed.add(definitions.path(name));
    }
    for (Arch arch : Arch.values()) {
      JsonNode members = definitions.path(arch.code() + "Arch").path("properties");
      closed.add(definitions.path(arch.code() + "Arch"));
      closed.add(definitions.path(arch.code() + "Component"));
      closed.add(members.path("design"));
      closed.add(members.path("softTissues"));
    }
    closed.forEach(schema -> ((ObjectNode) schema).put("unevaluatedProperties", false));
    return copy;
  }

  private static JsonNode tree() {
    try {
      return JSON.readTree(Files.readString(SCHEMA_FILE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<ValidationMessage> faults(String json) throws IOException {
    return SCHEMA.validate(JSON.readTree(json));
  }

  @Provide
  Arbitrary<Case> cases() {
    return ArbitraryCases.cases();
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void every_file_that_is_written_obeys_the_schema(@ForAll("cases") Case c) throws Exception {
    assertThat(faults(CaseCodec.toJson(c))).isEmpty();
  }

  @Provide
  Arbitrary<Case> knownCases() {
    return ArbitraryCases.knownCases();
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void every_member_that_is_written_is_described(@ForAll("knownCases") Case c) throws Exception {
    assertThat(STRICT.validate(JSON.readTree(CaseCodec.toJson(c)))).isEmpty();
  }

  @Example
  void every_member_that_is_described_is_written() throws IOException {
    Set<String> written = new TreeSet<>();
    for (Case c : ArbitraryCases.knownCases().sampleStream().limit(300).toList()) {
      namesIn(JSON.readTree(CaseCodec.toJson(c)), written);
    }
    Set<String> described = new TreeSet<>();
    TREE.findValues("properties").forEach(p -> p.fieldNames().forEachRemaining(described::add));
    assertThat(written).containsAll(described);
  }

  private static void namesIn(JsonNode node, Set<String> names) {
    node.fieldNames().forEachRemaining(names::add);
    node.forEach(child -> namesIn(child, names));
  }

  @TestFactory
  Stream<DynamicTest> every_demo_case_obeys_the_schema() throws IOException {
    Path folder = Path.of("demo-cases");
    if (!Files.isDirectory(folder)) {
      return Stream.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".json"))
          .sorted()
          .map(f -> dynamicTest(f.getFileName().toString(), () -> assertObeys(f)))
          .toList()
          .stream();
    }
  }

  private static void assertObeys(Path file) throws IOException, CaseFileException {
    String text = Files.readString(file);
    assertThat(faults(text)).isEmpty();
    assertThat(CaseCodec.toJson(CaseCodec.fromJson(text, file.toString())))
        .as("opened and saved again")
        .isEqualTo(text);
  }

  @TestFactory
  Stream<DynamicTest> the_schema_refuses_what_the_program_refuses() {
    return Stream.concat(
            ImpossibleCases.ALL.stream().filter(ImpossibleCases.Sample::schemaCanSay),
            Stream.of(
                new ImpossibleCases.Sample("not a case", "{}", "", true),
                new ImpossibleCases.Sample("a list", "[]", "", true),
                new ImpossibleCases.Sample(
                    "a newer version",
                    "{\"format\":\"saddlewright-case\",\"formatVersion\":3,\"reference\":\"R\"}",
                    "",
                    true)))
        .map(s -> dynamicTest(s.what(), () -> assertThat(faults(s.json())).isNotEmpty()));
  }

  @Test
  void the_schema_itself_is_a_lawful_schema() {
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(java.net.URI.create("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(TREE)).isEmpty();
  }

  private static final Map<String, Class<? extends Enum<?>>> WORDS =
      Map.ofEntries(
          Map.entry("status", ToothStatus.class),
          Map.entry("gapDecision", GapDecision.class),
          Map.entry("tilt", Tilt.class),
          Map.entry("condition", Condition.class),
          Map.entry("zone", Zone.class),
          Map.entry("restSite", RestSite.class),
          Map.entry("end", End.class),
          Map.entry("face", Face.class),
          Map.entry("side", Side.class),
          Map.entry("torus", SoftTissues.Torus.class),
          Map.entry("palateForm", SoftTissues.PalateForm.class),
          Map.entry("ridgeState", SoftTissues.RidgeState.class),
          Map.entry("saddleBase", Saddle.Base.class),
          Map.entry("flange", Saddle.Flange.class),
          Map.entry("lingualFinish", Saddle.Finish.class),
          Map.entry("restForm", Rest.Form.class),
          Map.entry("seat", Rest.Seat.class),
          Map.entry("claspForm", ClaspForm.class),
          Map.entry("claspMaterial", ClaspMaterial.class),
          Map.entry("guideSurface", GuidePlane.Surface.class),
          Map.entry("strutPlace", MinorConnector.Place.class),
          Map.entry("meshForm", RetentionMesh.Form.class),
          Map.entry("finishLevel", FinishLine.Level.class),
          Map.entry("damExtent", PostDam.Extent.class),
          Map.entry("reliefArea", Relief.Area.class),
          Map.entry("axis", Profile.Axis.class),
          Map.entry("evidence", Source.Evidence.class));

  /** Renaming a constant would otherwise change the format without anyone noticing. */
  @TestFactory
  Stream<DynamicTest> the_words_of_the_file_are_those_of_the_schema() {
    return WORDS.entrySet().stream()
        .map(
            e ->
                dynamicTest(
                    e.getKey(),
                    () ->
                        assertThat(Arrays.stream(e.getValue().getEnumConstants()).map(Word::of))
                            .containsExactlyElementsOf(words(e.getKey()))));
  }

  @Test
  void connectors_kinds_and_teeth_are_those_of_the_schema() {
    for (Arch arch : Arch.values()) {
      assertThat(words(arch.code() + "Connector"))
          .containsExactlyElementsOf(
              Arrays.stream(ConnectorForm.values())
                  .filter(f -> f.arch() == arch)
                  .map(Word::of)
                  .toList());
      assertThat(words(arch.code() + "Tooth"))
          .containsExactlyElementsOf(Tooth.in(arch).stream().map(Tooth::toString).toList());
    }
    assertThat(words("kind")).containsExactlyElementsOf(ComponentReader.kinds());
  }

  private static List<String> words(String definition) {
    return StreamSupport.stream(
            TREE.path("$defs").path(definition).path("enum").spliterator(), false)
        .map(JsonNode::asText)
        .toList();
  }
}
