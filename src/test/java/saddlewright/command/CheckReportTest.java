package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.ProfileFile;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Weighting;

/**
 * The report for programs, held against docs/check-schema.json by a JSON Schema validator that
 * knows nothing of this program; and the profiles by which cases are judged.
 */
class CheckReportTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private static JsonNode schemaText() throws IOException {
    return JSON.readTree(Files.readString(Path.of("docs/check-schema.json")));
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schemaText());
  }

  private static JsonNode check(Object... words) throws IOException {
    List<Object> all = new ArrayList<>(List.of("check", "--format", "json"));
    all.addAll(List.of(words));
    Run run = Run.of(all.toArray());
    assertThat(run.err()).isEmpty();
    return JSON.readTree(run.out());
  }

  private static List<Path> demoCases() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  @Test
  void the_report_of_every_demo_case_obeys_the_schema() throws Exception {
    JsonNode report = check(demoCases().toArray());
    assertThat(report.get("cases")).hasSameSizeAs(demoCases());
    assertThat(schema().validate(report)).isEmpty();
    for (JsonNode c : report.get("cases")) {
      JsonNode t = c.get("tally");
      int sum = 0;
      for (String count : List.of("judged", "unanswered", "notApplicable", "notTaught")) {
        sum += t.get(count).asInt();
      }
      assertThat(sum).isEqualTo(RuleBook.rules().size());
      Set<String> keys = new TreeSet<>();
      c.get("findings").forEach(f -> keys.add(f.get("key").asText()));
      assertThat(keys).hasSameSizeAs(c.get("findings"));
    }
  }

  /** A schema that let everything pass would prove nothing. */
  @Test
  void the_schema_refuses_what_the_report_never_says() throws Exception {
    String report = check(demoCases().get(0)).toString();
    assertThat(schema().validate(JSON.readTree(report.replace("\"tally\"", "\"count\""))))
        .isNotEmpty();
    assertThat(schema().validate(JSON.readTree(report.replace("built-in", "trusted"))))
        .isNotEmpty();
  }

  @Test
  void a_profile_from_a_file_judges_instead_of_the_pinned_one() throws Exception {
    Path file = folder.resolve("school.json");
    Profile school =
        Profile.UK_TEACHING
            .withName("Our school", "7")
            .with(Quantity.INDIRECT_DISTANCE, Threshold.of(2, Source.commonPractice("x")))
            .with(
                "indirect-retainers-lie-beyond-the-axis",
                Weighting.notTaught(Source.commonPractice("x")));
    ProfileStore.save(ProfileFile.of(school), file);
    JsonNode c = check("--profile", file, demoCases().get(0)).at("/cases/0");
    assertThat(c.at("/profile/id").asText()).isEqualTo("our-school");
    assertThat(c.at("/profile/version").asText()).isEqualTo("7");
    assertThat(c.at("/profile/standing").asText()).isEqualTo("own");
    assertThat(c.at("/profile/basedOn").asText()).isEqualTo("uk-teaching");
    assertThat(c.at("/tally/notTaught").asInt()).isEqualTo(1);
    Run text = Run.of("check", "--profile", "hygiene-first", demoCases().get(0));
    assertThat(text.out()).contains("\nSchool profile: Hygiene first, version 1\n");
  }

  @Test
  void a_profile_that_is_nowhere_or_broken_exits_two_with_a_sentence() throws Exception {
    Path blank = folder.resolve("blank.json");
    CaseStore.save(Case.blank("T"), blank);
    Run nowhere = Run.of("check", "--profile", "no-such", blank);
    assertThat(nowhere.code()).isEqualTo(2);
    assertThat(nowhere.err())
        .startsWith(
            "\"no-such\" is neither a file nor a built-in profile (uk-teaching,"
                + " north-american-teaching, hygiene-first).");
    Run notOne = Run.of("check", "--profile", blank, blank);
    assertThat(notOne.code()).isEqualTo(2);
    assertThat(notOne.err()).startsWith("blank.json is JSON but not a school profile");
  }

  @Test
  void what_waits_for_a_value_is_said_in_words() throws Exception {
    List<String> lines = Run.of("check", demoCases().get(0)).out().lines().toList();
    JsonNode c = check(demoCases().get(0)).at("/cases/0");
    assertThat(lines.stream().filter(l -> l.startsWith("?        Can't judge: ")))
        .hasSameSizeAs(c.get("questions"));
    assertThat(lines)
        .anyMatch(l -> l.matches("Rules: \\d+ judged, \\d+ wait for a value, .*not taught\\."));
  }
}
