package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;
import static saddlewright.casefile.json.ImpossibleCases.file;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;
import saddlewright.design.UnknownComponent;

/** Each sort of bad file gets its own sentence; what is merely unwise or unknown is opened. */
class BadInputTest {

  private static CaseFileException refusal(byte[] bytes) {
    return catchThrowableOfType(
        CaseFileException.class, () -> CaseCodec.fromBytes(bytes, "bad.json"));
  }

  private static void assertRefused(String json, Kind kind, String sentences) {
    CaseFileException e = refusal(json.getBytes(StandardCharsets.UTF_8));
    assertThat(e).as(json).isNotNull().hasMessage("bad.json" + sentences);
    assertThat(e.kind()).isEqualTo(kind);
  }

  @TestFactory
  Stream<DynamicTest> the_impossible_is_refused_with_its_place_and_cure() {
    return ImpossibleCases.ALL.stream()
        .map(
            s ->
                dynamicTest(
                    s.what(), () -> assertRefused(s.json(), Kind.IMPOSSIBLE, s.sentences())));
  }

  @Test
  void text_that_is_not_json_is_refused_with_line_and_column() {
    String cure = " Look there for a missing comma, quote or bracket, or open an earlier copy.";
    assertRefused("Dear laboratory", Kind.NOT_JSON, " is not JSON: line 1, column 1." + cure);
    assertRefused(
        "{\n  \"format\": \"saddlewright-case\"\n  \"title\": 1}",
        Kind.NOT_JSON,
        " is not JSON: line 3, column 3." + cure);
    assertRefused("{} {}", Kind.NOT_JSON, " is not JSON: line 1, column 4." + cure);
  }

  @Test
  void an_empty_file_is_refused() {
    for (String empty : new String[] {"", " \n\n"}) {
      assertRefused(
          empty, Kind.NOT_JSON, " is empty. Open another file, or an earlier copy of this one.");
    }
  }

  @Test
  void json_of_something_else_is_refused() {
    for (String other :
        new String[] {"{}", "[]", "null", "7", "{\"format\":\"x\"}", "{\"format\":1}"}) {
      assertRefused(
          other,
          Kind.NOT_A_CASE,
          " is JSON but not a case: it does not say \"format\": \"saddlewright-case\". Open a file"
              + " that was saved as a case.");
    }
    for (String version : new String[] {"", ",\"formatVersion\":\"1\"", ",\"formatVersion\":0"}) {
      assertRefused(
          "{\"format\":\"saddlewright-case\"" + version + "}",
          Kind.NOT_A_CASE,
          " does not say which version of the format it has. Write \"formatVersion\": 2 if you"
              + " made it by hand.");
    }
  }

  @Test
  void a_case_of_a_newer_version_is_told_from_a_broken_one() {
    for (String version : new String[] {"3", "99999999999999999999999999"}) {
      assertRefused(
          // What else a newer version may hold is not looked at.
          "{\"format\":\"saddlewright-case\",\"formatVersion\":" + version + ",\"upper\":7}",
          Kind.NEWER_VERSION,
          " was saved by a newer version of the program (format "
              + version
              + "; this one reads up to 2). Update the program to open it.");
    }
  }

  @Test
  void what_is_no_number_is_refused_with_its_place() {
    String cure = " is not a number. Give the measured number, or remove it.";
    for (String no : new String[] {"NaN", "Infinity", "-Infinity"}) {
      assertRefused(
          file("'upper':{'teeth':{'16':{'crownHeight':" + no + "}}}"),
          Kind.IMPOSSIBLE,
          ": upper › tooth 16 › crownHeight: " + no + cure);
      assertRefused(
          file("'upper':{'x':[1,{'y':" + no + "}]}"),
          Kind.IMPOSSIBLE,
          ": upper › x › no. 2 › y: " + no + cure);
      assertRefused(
          file("'upper':{'design':{'components':[{'id':'a','kind':'b','c':" + no + "}]}}"),
          Kind.IMPOSSIBLE,
          ": upper › design › component \"a\" › c: " + no + cure);
    }
  }

  @Test
  void an_exponent_beyond_all_sizes_is_refused() {
    assertRefused(
        file("'upper':{'teeth':{'16':{'crownHeight':3.1e5358979323846264338327950288}}}"),
        Kind.TOO_LARGE,
        " holds a number with an exponent far beyond any size in a case. Correct it, or open an"
            + " earlier copy.");
  }

  @Test
  void one_name_twice_in_an_object_is_refused() {
    assertRefused(
        file("'title':'a','title':'b'"),
        Kind.NOT_JSON,
        " names \"title\" twice in one place: line 1, column 84. Remove the one that is wrong and"
            + " open it again.");
  }

  @Test
  void deep_nesting_is_refused_and_does_no_harm() {
    String sentences =
        " is nested more than 64 levels deep, which no case is. Check that this is the right file.";
    assertRefused("[".repeat(5_000_000), Kind.TOO_LARGE, sentences);
    assertRefused("{\"a\":".repeat(1_000_000), Kind.TOO_LARGE, sentences);
    assertRefused(file("'x':" + "[".repeat(64) + "]".repeat(64)), Kind.TOO_LARGE, sentences);
  }

  @Test
  void a_number_of_many_digits_is_refused() {
    CaseFileException e =
        refusal(file("'x':" + "7".repeat(1_000_000)).getBytes(StandardCharsets.UTF_8));
    assertThat(e.kind()).isEqualTo(Kind.TOO_LARGE);
    assertThat(e.getMessage())
        .startsWith("bad.json holds a number, name or text longer than any in a case")
        .endsWith("Check that this is the right file.");
  }

  @Test
  void a_number_with_a_huge_exponent_is_kept_without_being_written_out() throws Exception {
    String json = file("'x':1E+999999999");
    Case c = CaseCodec.fromJson(json, "c.json");
    assertThat(c.extras()).isEqualTo(Map.of("/x", "1E+999999999"));
    assertThat(CaseCodec.toJson(c)).contains("\"x\": 1E+999999999");
  }

  @Test
  void a_file_of_fifty_megabytes_is_refused_before_it_is_parsed() {
    byte[] large = new byte[50_000_000];
    java.util.Arrays.fill(large, (byte) ' ');
    assertThat(refusal(large))
        .hasMessage(
            "bad.json is larger than 20 MB, which no case is. Check that this is the right file.");
  }

  @Test
  void text_in_another_encoding_is_refused() {
    String json = "{\n\"title\": \"Zürich\"}";
    assertThat(refusal(json.getBytes(StandardCharsets.ISO_8859_1)))
        .hasMessage(
            "bad.json is not UTF-8 text: line 2 holds a byte that cannot be read. Save it as UTF-8"
                + " and open it again.");
    assertThat(refusal(json.getBytes(StandardCharsets.UTF_16)).kind()).isEqualTo(Kind.NOT_JSON);
    assertThat(refusal(new byte[] {'{', '"', (byte) 0xC3}).kind()).isEqualTo(Kind.NOT_JSON);
  }

  @Test
  void a_bad_design_is_opened_like_a_good_one() throws Exception {
    Case c =
        CaseCodec.fromJson(
            file(
                "'lower':{'teeth':{'36':{'status':'missing'}},'design':{'components':["
                    + "{'id':'c','kind':'clasp','tooth':36,'form':'ring','tip':'mid-buccal',"
                    + "'origin':'distal'},"
                    + "{'id':'r','kind':'rest','tooth':37,'site':'cingulum'}]}}"),
            "c.json");
    ArchDesign design = c.design(Arch.LOWER);
    assertThat(design.all(Clasp.class).get(0).tooth()).isEqualTo(Tooth.T36);
    assertThat(design.all(Rest.class).get(0))
        .isEqualTo(Rest.of(ComponentId.of("r"), Tooth.T37, RestSite.CINGULUM));
  }

  @Test
  void an_unknown_component_is_kept_at_its_place_and_written_back() throws Exception {
    String json =
        file(
            "'lower':{'design':{'components':[{'id':'a','kind':'backing','tooth':36},"
                + "{'later':[1.50,null],'kind':'magnet','id':'m','tooth':99},"
                + "{'id':'b','kind':'backing','tooth':37}]}}");
    Case c = CaseCodec.fromJson(json, "c.json");
    assertThat(c.design(Arch.LOWER).components().get(1))
        .isEqualTo(
            new UnknownComponent(
                ComponentId.of("m"),
                "magnet",
                "{\"later\":[1.50,null],\"kind\":\"magnet\",\"id\":\"m\",\"tooth\":99}"));
    assertThat(CaseCodec.toJson(c).replaceAll("\\s", ""))
        .contains(json.substring(json.indexOf("\"lower\""), json.length() - 1));
  }

  @Test
  void unknown_members_of_a_component_go_with_it_when_it_is_removed() throws Exception {
    Case c =
        CaseCodec.fromJson(
            file(
                "'lower':{'x':1,'design':{'components':["
                    + "{'id':'a','kind':'backing','tooth':36,'x':2},"
                    + "{'id':'b','kind':'backing','tooth':37,'x':3}]}}"),
            "c.json");
    ComponentId a = ComponentId.of("a");
    Case without = c.with(c.design(Arch.LOWER).without(a));
    assertThat(without.extras())
        .isEqualTo(Map.of("/lower/x", "1", "/lower/design/components/b/x", "3"));
  }

  @Test
  void a_migration_leads_each_older_version_to_the_current_one() {
    Migrations two =
        new Migrations(
            java.util.List.of(
                file -> file.put("story", file.path("story").asText() + "1"),
                file -> file.put("story", file.path("story").asText() + "2")));
    assertThat(two.current()).isEqualTo(3);
    for (int version = 1; version <= 3; version++) {
      com.fasterxml.jackson.databind.node.ObjectNode old =
          com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.objectNode();
      assertThat(two.bringUpToDate(old, version).path("story").asText())
          .isEqualTo("12".substring(version - 1));
    }
  }
}
