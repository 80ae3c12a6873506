package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.ProfileFile;
import saddlewright.rules.LimitRange;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Severity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Weighting;

/** A school's own profile in a file of its own and inside a case. */
class ProfileCodecTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String TOP =
      "{\"format\":\"saddlewright-profile\",\"formatVersion\":1,\"name\":\"Our school\","
          + "\"version\":\"2026\"";

  @TempDir Path folder;

  private static Profile read(String rest) throws CaseFileException {
    return ProfileCodec.fromJson(TOP + rest + "}", "school.json").profile();
  }

  private static void assertRefused(String json, Kind kind, String sentences) {
    CaseFileException e =
        catchThrowableOfType(
            CaseFileException.class, () -> ProfileCodec.fromJson(json, "school.json"));
    assertThat(e).as(json).isNotNull().hasMessage("school.json" + sentences);
    assertThat(e.kind()).isEqualTo(kind);
  }

  private static void assertImpossible(String rest, String sentences) {
    assertRefused(TOP + rest + "}", Kind.IMPOSSIBLE, ": " + sentences);
  }

  @Provide
  Arbitrary<Profile> profiles() {
    return ArbitraryCases.profiles(true);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void what_is_written_is_read_again_and_obeys_the_schema(@ForAll("profiles") Profile p)
      throws Exception {
    String json = ProfileCodec.toJson(ProfileFile.of(p));
    ProfileFile again = ProfileCodec.fromJson(json, "school.json");
    assertThat(again).isEqualTo(ProfileFile.of(p.asOwn()));
    assertThat(ProfileCodec.toJson(again)).isEqualTo(json);
    assertThat(schema().validate(JSON.readTree(json))).isEmpty();
  }

  private static JsonSchema schema() throws Exception {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(JSON.readTree(Files.readString(Path.of("docs/profile-schema.json"))));
  }

  /** A profile means the same alone and inside a case: both schemas describe it alike. */
  @Test
  void the_schemas_of_profile_and_case_agree() throws Exception {
    JsonNode alone = JSON.readTree(Files.readString(Path.of("docs/profile-schema.json")));
    JsonNode inCase = JSON.readTree(Files.readString(Path.of("docs/case-schema.json")));
    alone
        .path("$defs")
        .properties()
        .forEach(d -> assertThat(inCase.at("/$defs/" + d.getKey())).isEqualTo(d.getValue()));
    inCase
        .at("/$defs/ownProfile/properties")
        .properties()
        .forEach(m -> assertThat(alone.at("/properties/" + m.getKey())).isEqualTo(m.getValue()));
  }

  @Test
  void a_file_need_name_only_what_departs() throws Exception {
    Profile p =
        read(
            ",\"basedOn\":\"north-american-teaching\",\"limits\":{\"lingual-bar-depth\":{"
                + "\"value\":7,\"unit\":\"mm\",\"reason\":\"our laboratory casts 3 mm bars\"}}");
    assertThat(p.standing()).isEqualTo(Profile.Standing.OWN);
    assertThat(p.id()).isEqualTo("our-school");
    assertThat(p.limit(Quantity.LINGUAL_BAR_DEPTH)).isEqualTo(7);
    assertThat(p.limits().get(Quantity.LINGUAL_BAR_DEPTH).source())
        .isEqualTo(Source.commonPractice(Profile.OWN_TEACHING));
    assertThat(p.axis()).isEqualTo(Profile.Axis.SUPPORT);
    assertThat(p.weights()).isEqualTo(Profile.NORTH_AMERICAN_TEACHING.weights());
    assertThat(p.departures()).hasSize(1);
    assertThat(p.departures().get(0).words())
        .isEqualTo("lingual depth for a lingual bar: 7 mm, not 8 mm");
  }

  @Test
  void unknown_members_are_kept_here_and_in_a_case() throws Exception {
    String json = TOP + ",\"course\":\"year 3\",\"limits\":{\"of-a-later-version\":{\"value\":3}}}";
    ProfileFile file = ProfileCodec.fromJson(json, "school.json");
    assertThat(ProfileCodec.toJson(file)).contains("\"course\": \"year 3\"", "of-a-later-version");
    Case c = Case.blank("R").withProfile(file);
    Case again = CaseCodec.fromJson(CaseCodec.toJson(c), "case.json");
    assertThat(again).isEqualTo(c);
    assertThat(again.schoolProfile()).isEqualTo(file);
    Case edited =
        again.withProfile(
            again
                .profile()
                .with(Quantity.LOWER_BORDER, Threshold.of(4, Source.commonPractice("x"))));
    assertThat(edited.schoolProfile().extras()).isEqualTo(file.extras());
    assertThat(edited.withProfile(Profile.HYGIENE_FIRST).extras()).isEmpty();
  }

  @Test
  void a_case_names_a_built_in_profile_and_carries_a_schools_own() throws Exception {
    Case c = Case.blank("R");
    assertThat(CaseCodec.toJson(c)).contains("\"profile\": \"uk-teaching\"");
    Profile own =
        Profile.HYGIENE_FIRST
            .withName("Our school", "7")
            .with(
                "lingual-bars-have-depth",
                Weighting.notTaught(Source.commonPractice("x")).because("plates only"));
    Case pinned = CaseCodec.fromJson(CaseCodec.toJson(c.withProfile(own)), "c.json");
    assertThat(pinned.profile()).isEqualTo(own);
    assertThat(pinned.profile().base()).isEqualTo(Profile.HYGIENE_FIRST);
  }

  @Test
  void an_unknown_profile_is_judged_by_uk_teaching_and_written_back() throws Exception {
    for (String member :
        new String[] {
          "\"of-a-later-version\"",
          "{\n    \"id\": \"of-a-later-version\",\n    \"version\": \"3\"\n  }",
          "{\n    \"id\": \"uk-teaching\",\n    \"version\": \"3\"\n  }"
        }) {
      String json =
          "{\n  \"format\": \"saddlewright-case\",\n  \"formatVersion\": 2,\n"
              + "  \"reference\": \"R\",\n  \"title\": \"\",\n  \"profile\": "
              + member
              + "\n}\n";
      Case c = CaseCodec.fromJson(json, "c.json");
      assertThat(c.profile().standing()).isEqualTo(Profile.Standing.UNKNOWN);
      assertThat(c.profile().limits()).isEqualTo(Profile.UK_TEACHING.limits());
      assertThat(c.profile().label()).contains("judged by UK teaching, version 1");
      assertThat(CaseCodec.toJson(c)).isEqualTo(json);
    }
  }

  @Test
  void an_implausible_limit_is_refused_with_the_range() {
    // The British limit is 8 mm; 8 cm, or 0.8, is a slip.
    for (String slip : new String[] {"80", "0.8", "-8"}) {
      assertImpossible(
          ",\"limits\":{\"lingual-bar-depth\":{\"value\":" + slip + "}}",
          "limits › lingual-bar-depth › value: "
              + slip
              + " mm is not plausible for lingual depth for a lingual bar. Give a limit from 2 to"
              + " 32 mm.");
    }
  }

  @Test
  void the_impossible_is_refused_with_place_and_cure() {
    assertImpossible(
        ",\"limits\":{\"lingual-bar-depth\":{\"value\":8,\"unit\":\"cm\"}}",
        "limits › lingual-bar-depth › unit: \"cm\" is not the unit of this limit. Give it in mm.");
    assertImpossible(
        ",\"limits\":{\"lingual-bar-depth\":{\"source\":\"x\"}}",
        "limits › lingual-bar-depth: \"value\" is missing. Add it and open the file again.");
    assertImpossible(
        ",\"limits\":{\"lingual-bar-depth\":{\"value\":NaN}}",
        "limits › lingual-bar-depth › value: NaN is not a number. Give the measured number, or"
            + " remove it.");
    assertImpossible(
        ",\"weights\":{\"lingual-bars-have-depth\":{\"weight\":\"perhaps\"}}",
        "weights › lingual-bars-have-depth › weight: \"perhaps\" is not known here. Use one of"
            + " must, should, consider, not-taught.");
    assertImpossible(
        ",\"weights\":{\"dentures-are-not-one-sided\":{\"weight\":\"not-taught\"}}",
        "weights › dentures-are-not-one-sided: this rule guards the patient's life and no school"
            + " may weigh it less. Remove the entry.");
    assertImpossible(
        ",\"axis\":\"both\"", "axis: \"both\" is not known here. Use one of clasp, support.");
    assertRefused(
        TOP.replace("Our school", " ") + "}",
        Kind.IMPOSSIBLE,
        ": name: a profile without a name could not be told from others. Give it the name of the"
            + " school or course.");
  }

  @Test
  void other_files_are_told_from_profiles() {
    assertRefused(
        CaseCodec.toJson(Case.blank("R")),
        Kind.NOT_A_PROFILE,
        " is JSON but not a school profile: it does not say \"format\": \"saddlewright-profile\"."
            + " Open a file that was saved as a school profile.");
    assertRefused(
        TOP.replace(":1,", ":2,") + "}",
        Kind.NEWER_VERSION,
        " was saved by a newer version of the program (format 2; this one reads up to 1). Update"
            + " the program to open it.");
  }

  @Test
  void a_file_is_saved_whole_and_opened_again() throws Exception {
    Path file = folder.resolve("school.json");
    ProfileStore.save(ProfileFile.of(Profile.UK_TEACHING), file);
    Profile p = ProfileStore.load(file).profile();
    assertThat(p.title()).isEqualTo("Our teaching, after UK teaching");
    assertThat(p.departures()).isEmpty();
    CaseFileException e =
        catchThrowableOfType(CaseFileException.class, () -> ProfileStore.load(folder));
    assertThat(e)
        .hasMessage(
            folder.getFileName()
                + " is a folder, not a school profile file. Choose a file inside it.");
  }

  @Test
  void every_built_in_limit_is_plausible() {
    for (Profile p : Profile.BUILT_IN) {
      for (Quantity q : Quantity.values()) {
        assertThat(LimitRange.of(q).holds(p.limit(q))).as(p.title() + " " + q).isTrue();
      }
    }
  }

  @Test
  void every_departure_of_a_built_in_profile_has_source_and_reason() {
    for (Profile p : Profile.BUILT_IN) {
      assertThat(p.departures().isEmpty()).isEqualTo(p == Profile.UK_TEACHING);
      p.departures()
          .forEach(
              d -> {
                assertThat(d.source().citation()).as(p.title() + ": " + d.what()).isNotBlank();
                assertThat(d.reason()).as(p.title() + ": " + d.what()).isNotBlank();
              });
      assertThat(p.weights().keySet())
          .as("rules of the book")
          .allMatch(id -> RuleBook.find(id).isPresent());
    }
  }

  @Test
  void a_rule_weighed_anew_is_a_departure() {
    Profile own =
        Profile.UK_TEACHING.with(
            "lingual-bars-have-depth",
            Weighting.of(Severity.CONSIDER, Source.commonPractice("our clinic")));
    assertThat(own.departures()).hasSize(1);
    assertThat(own.departures().get(0).here()).isEqualTo("consider");
    assertThat(own.departures().get(0).there()).isEqualTo("must");
    assertThat(own.withBaseWeight("lingual-bars-have-depth").departures()).isEmpty();
    assertThat(own.basedOn()).isEqualTo(Optional.of("uk-teaching"));
  }
}
