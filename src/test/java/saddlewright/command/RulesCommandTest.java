package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RuleGroup;

/** The rule book and the profiles on the command line. */
class RulesCommandTest {
  @TempDir Path folder;

  @Test
  void the_book_is_listed_by_chapter_with_every_rule() {
    Run run = Run.of("rules");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith(RuleBook.rules().size() + " rules, weighed by UK teaching, version 1.\n");
    for (RuleGroup g : RuleGroup.values()) {
      assertThat(run.out()).contains("\n\n" + g.title() + "\n");
    }
    for (Rule r : RuleBook.rules()) {
      assertThat(run.out()).contains("  " + r.id() + "\n");
    }
    assertThat(run.out().lines().map(String::length)).allMatch(n -> n <= 100);
  }

  @Test
  void json_lists_the_same_for_programs() throws Exception {
    JsonNode root = new ObjectMapper().readTree(Run.of("rules", "--format", "json").out());
    Set<String> ids = new HashSet<>();
    root.get("rules").forEach(r -> ids.add(r.get("id").asText()));
    assertThat(ids).hasSameSizeAs(RuleBook.rules());
    assertThat(root.at("/profile/id").asText()).isEqualTo("uk-teaching");
  }

  @Test
  void a_school_weighs_a_rule_otherwise_and_says_why() {
    Run run = Run.of("rules", "cast-arms-are-long-enough", "--profile", "north-american-teaching");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("North American teaching: consider, usually must.")
        .contains("bench data keep a cast arm in 0.25 mm within its safe limit on premolars.");
  }

  /** The pages are packed from docs/rules, so that there is one source. */
  @Test
  void every_page_is_printed_as_it_stands_in_the_documents() throws Exception {
    for (Rule r : RuleBook.rules()) {
      Run run = Run.of("rules", r.id());
      assertThat(run.code()).isZero();
      String printed = run.out().replaceAll("\\s+", "");
      assertThat(printed).contains(r.source().citation().replaceAll("\\s+", ""));
      String page = Files.readString(Path.of("docs/rules", r.id() + ".md"));
      String body = page.substring(page.indexOf("\n## "));
      for (String line : body.split("\n")) {
        String plain = line.replaceFirst("^## ", "").replaceAll("\\*\\*|`|\\s+", "");
        assertThat(printed).as(r.id()).contains(plain);
      }
    }
  }

  @Test
  void an_unknown_rule_exits_two() {
    Run run = Run.of("rules", "no-such-rule");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("\"no-such-rule\" is not the id of a rule;");
  }

  @Test
  void profiles_are_listed_with_what_they_hold_otherwise() {
    Run run = Run.of("profiles");
    assertThat(run.code()).isZero();
    for (Profile p : Profile.BUILT_IN) {
      assertThat(run.out()).contains(p.id() + ": " + p.title() + ", version 1\n");
    }
    // Wrought wire: 0.75 mm in Britain, 0.50 mm (0.020 in, 18 gauge) in North America.
    assertThat(run.out()).contains("undercut for wrought stainless steel: 0.5 mm, not 0.75 mm\n");
  }

  @Test
  void a_printed_profile_is_a_file_to_start_ones_own_from() throws Exception {
    Path file = folder.resolve("school.json");
    Files.writeString(file, Run.of("profiles", "north-american-teaching").out());
    Run again = Run.of("profiles", file);
    assertThat(again.code()).isZero();
    assertThat(again.out()).isEqualTo(Files.readString(file));
    JsonNode root = new ObjectMapper().readTree(again.out());
    assertThat(root.get("limits")).hasSize(Quantity.values().length);
    assertThat(root.get("basedOn").asText()).isEqualTo("north-american-teaching");
  }
}
