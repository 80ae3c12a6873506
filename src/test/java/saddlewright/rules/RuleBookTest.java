package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rule book holds itself: every rule listed, named, documented, with a case each way. */
class RuleBookTest {
  private static final Path PAGES = Path.of("docs", "rules");

  @Test
  void every_rule_in_the_tree_is_listed() throws IOException {
    Path tree = Path.of("src", "main", "java", "saddlewright", "rules");
    Set<String> written = new TreeSet<>();
    try (Stream<Path> files = Files.walk(tree)) {
      for (Path f : files.filter(x -> x.toString().endsWith(".java")).toList()) {
        if (Files.readString(f).contains("implements Rule {")) {
          written.add(f.getFileName().toString().replace(".java", ""));
        }
      }
    }
    assertThat(RuleBook.rules())
        .extracting(r -> r.getClass().getSimpleName())
        .containsExactlyInAnyOrderElementsOf(written);
  }

  @Test
  void rules_are_sorted_by_id() {
    assertThat(RuleBook.rules()).extracting(Rule::id).isSorted().doesNotHaveDuplicates();
  }

  @TestFactory
  Stream<DynamicTest> an_id_is_the_class_name_in_kebab_case() {
    return each(
        rule ->
            assertThat(rule.id())
                .isEqualTo(
                    rule.getClass()
                        .getSimpleName()
                        .replaceAll("(?<!^)([A-Z])", "-$1")
                        .toLowerCase(Locale.ROOT)));
  }

  @TestFactory
  Stream<DynamicTest> a_page_says_what_the_code_says() {
    return each(
        rule -> {
          String page = Files.readString(PAGES.resolve(rule.id() + ".md"));
          assertThat(page)
              .contains(rule.claim())
              .contains("Severity: **" + rule.severity() + "**")
              .contains(rule.source().citation() + " (" + rule.source().evidence().words() + ")")
              .contains("## Why")
              .contains("## Measured and required")
              .contains("## What to do")
              .contains("## When to waive");
        });
  }

  @Test
  void every_page_belongs_to_a_rule_and_is_in_the_index() throws IOException {
    String index = Files.readString(PAGES.resolve("README.md"));
    try (Stream<Path> pages = Files.list(PAGES)) {
      for (Path p : pages.filter(x -> !x.endsWith("README.md")).toList()) {
        String id = p.getFileName().toString().replace(".md", "");
        assertThat(RuleBook.find(id)).as(id).isPresent();
        assertThat(index).contains("(" + id + ".md)");
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> every_rule_has_a_firing_and_a_quiet_case() {
    return each(
        rule -> {
          List<RuleCase> cases =
              RuleCasesTest.all().stream().filter(c -> c.rule().id().equals(rule.id())).toList();
          assertThat(cases).hasSize(1);
          assertThat(cases.get(0).firing()).isNotEmpty();
          assertThat(cases.get(0).quiet()).isNotEmpty();
        });
  }

  @Test
  void every_limit_has_a_source() {
    for (Profile p : Profile.BUILT_IN) {
      for (Quantity q : Quantity.values()) {
        assertThat(p.source(q).citation()).as(q.words()).isNotBlank();
      }
    }
  }

  @Test
  void every_rule_that_a_school_weighs_otherwise_is_in_the_book() {
    for (Profile p : Profile.BUILT_IN) {
      assertThat(p.weights().keySet())
          .allSatisfy(id -> assertThat(RuleBook.find(id)).as(id).isPresent());
    }
  }

  @Test
  void former_ids_lead_to_rules_of_today() {
    RuleBook.FORMER_IDS.forEach(
        (old, now) -> {
          assertThat(RuleBook.rules()).extracting(Rule::id).contains(now).doesNotContain(old);
        });
  }

  @Test
  void the_book_is_as_full_as_it_says() {
    long withRemedies =
        RuleCasesTest.all().stream()
            .filter(
                c ->
                    c.firing().values().stream()
                        .anyMatch(
                            f ->
                                c.rule().judge(f.situation()).findings().stream()
                                    .anyMatch(x -> !x.remedies().isEmpty())))
            .count();
    assertThat(RuleBook.rules()).hasSizeGreaterThanOrEqualTo(100);
    assertThat(withRemedies).isGreaterThanOrEqualTo(40);
  }

  private interface Check {
    void on(Rule rule) throws IOException;
  }

  private static Stream<DynamicTest> each(Check check) {
    return RuleBook.rules().stream().map(r -> dynamicTest(r.id(), () -> check.on(r)));
  }
}
