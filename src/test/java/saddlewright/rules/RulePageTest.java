package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages of the rules come with the program and can be read section by section. */
class RulePageTest {
  static java.util.List<Rule> rules() {
    return RuleBook.rules();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void every_rule_has_a_page_that_says_why_what_to_do_and_when_to_waive(Rule rule)
      throws Exception {
    RulePage page = RulePage.of(rule);
    assertThat(page.text()).isEqualTo(Files.readString(Path.of("docs/rules", rule.id() + ".md")));
    assertThat(page.why()).get().asString().isNotBlank();
    assertThat(page.section("What to do")).get().asString().isNotBlank();
    assertThat(page.whenToWaive()).get().asString().isNotBlank();
  }

  @Test
  void lines_of_a_paragraph_are_joined_and_points_of_a_list_stay_apart() {
    RulePage page =
        RulePage.parse(
            "# id\n\nClaim.\n\n## Why\nOne\ntwo **three**.\n\nFour.\n\n## What to do\n- a\n- b\n");
    assertThat(page.why()).contains("One two three.\nFour.");
    assertThat(page.section("What to do")).contains("- a\n- b");
    assertThat(page.section("None")).isEmpty();
  }
}
