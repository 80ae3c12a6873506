package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;

/** What holds of every case, however odd. */
class CaseCodecPropertiesTest {

  @Provide
  Arbitrary<Case> cases() {
    return ArbitraryCases.cases();
  }

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
  void a_case_that_is_written_and_read_is_the_same_case(@ForAll("cases") Case c) throws Exception {
    assertThat(CaseCodec.fromBytes(CaseCodec.toBytes(c), "c.json")).isEqualTo(c);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void a_file_that_is_opened_and_saved_is_the_same_file(@ForAll("cases") Case c) throws Exception {
    String once = CaseCodec.toJson(c);
    assertThat(CaseCodec.toJson(CaseCodec.fromJson(once, "c.json"))).isEqualTo(once);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void any_file_that_is_cut_short_is_refused_in_words(
      @ForAll("cases") Case c, @ForAll java.util.Random random) {
    String whole = CaseCodec.toJson(c);
    String part = whole.substring(0, random.nextInt(whole.length() - 2));
    try {
      CaseCodec.fromJson(part, "c.json");
      throw new AssertionError("was read: " + part);
    } catch (CaseFileException e) {
      assertThat(e.kind()).isEqualTo(CaseFileException.Kind.NOT_JSON);
      assertThat(e.getMessage()).startsWith("c.json ").endsWith(".");
    }
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void a_file_with_damage_inside_is_read_or_refused_in_words(
      @ForAll("cases") Case c, @ForAll java.util.Random random) {
    StringBuilder text = new StringBuilder(CaseCodec.toJson(c));
    String junk = "{}[]\",:0-.eNaI9tn\\";
    for (int i = 0; i <= random.nextInt(3); i++) {
      text.setCharAt(random.nextInt(text.length()), junk.charAt(random.nextInt(junk.length())));
    }
    try {
      CaseCodec.fromJson(text.toString(), "c.json");
    } catch (CaseFileException e) {
      assertThat(e.getMessage()).startsWith("c.json").endsWith(".").doesNotContain("xception");
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void every_line_is_indented_by_pairs_of_spaces_and_ends_with_a_line_feed(
      @ForAll("cases") Case c) {
    String json = CaseCodec.toJson(c);
    assertThat(json).endsWith("}\n").doesNotContain("\r");
    assertThat(json.lines()).allMatch(line -> line.indexOf(line.strip()) % 2 == 0);
  }
}
