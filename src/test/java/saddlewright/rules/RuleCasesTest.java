package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every rule fires and keeps quiet where it should, and its remedies cure what it finds. */
class RuleCasesTest {

  private static final List<RuleCase> ALL = written();

  static List<RuleCase> all() {
    return ALL;
  }

  private static List<RuleCase> written() {
    return Stream.of(
            PlacingCases.all(),
            SaddleCases.all(),
            SupportCases.all(),
            RetentionCases.all(),
            ClaspingCases.all(),
            UndercutCases.all(),
            BracingCases.all(),
            IndirectCases.all(),
            AbutmentCases.all(),
            FrameworkCases.all(),
            UpperConnectorCases.all(),
            LowerConnectorCases.all(),
            HygieneCases.all())
        .flatMap(List::stream)
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> fires() {
    return all().stream()
        .flatMap(
            c ->
                c.firing().entrySet().stream()
                    .map(
                        e ->
                            dynamicTest(
                                c.rule().id() + " fires: " + e.getKey(),
                                () -> {
                                  List<Finding> found =
                                      c.rule().judge(e.getValue().situation()).findings();
                                  assertThat(found).isNotEmpty();
                                  assertThat(found.get(0).sentence())
                                      .matches(pattern(e.getValue().sentence()));
                                  assertThat(found.get(0).severity())
                                      .isEqualTo(e.getValue().severity());
                                  assertThat(found).allMatch(f -> f.ruleId().equals(c.rule().id()));
                                })));
  }

  /** A # stands for a number that the layout measures. */
  private static String pattern(String sentence) {
    return Stream.of(sentence.split("#", -1))
        .map(Pattern::quote)
        .collect(Collectors.joining("-?[0-9]+([.][0-9]+)?"));
  }

  @TestFactory
  Stream<DynamicTest> keeps_quiet() {
    return all().stream()
        .flatMap(
            c ->
                c.quiet().entrySet().stream()
                    .map(
                        e ->
                            dynamicTest(
                                c.rule().id() + " is quiet: " + e.getKey(),
                                () ->
                                    assertThat(c.rule().judge(e.getValue().get()).findings())
                                        .isEmpty())));
  }

  @TestFactory
  Stream<DynamicTest> asks_for_what_is_not_charted() {
    return all().stream()
        .flatMap(
            c ->
                c.asking().entrySet().stream()
                    .map(
                        e ->
                            dynamicTest(
                                c.rule().id() + " asks: " + e.getKey(),
                                () ->
                                    assertThat(c.rule().judge(e.getValue().situation()).questions())
                                        .extracting(q -> q.field().words())
                                        .contains(e.getValue().words()))));
  }

  @TestFactory
  Stream<DynamicTest> credits_what_answers_it() {
    return all().stream()
        .flatMap(
            c ->
                c.upholding().entrySet().stream()
                    .map(
                        e ->
                            dynamicTest(
                                c.rule().id() + " is upheld: " + e.getKey(),
                                () ->
                                    assertThat(c.rule().judge(e.getValue().situation()).credits())
                                        .anySatisfy(
                                            x ->
                                                assertThat(x.words())
                                                    .matches(pattern(e.getValue().words()))))));
  }

  @TestFactory
  Stream<DynamicTest> remedies_clear_the_finding() {
    List<DynamicTest> out = new ArrayList<>();
    for (RuleCase c : all()) {
      c.firing()
          .forEach(
              (name, f) -> {
                for (Finding finding : c.rule().judge(f.situation()).findings()) {
                  for (Remedy remedy : finding.remedies()) {
                    out.add(
                        dynamicTest(
                            c.rule().id() + ", " + name + ": " + remedy.label(),
                            () -> cures(c.rule(), f.situation(), finding, remedy)));
                  }
                }
              });
    }
    return out.stream();
  }

  private static void cures(Rule rule, Situation s, Finding finding, Remedy remedy) {
    Situation after =
        Situation.of(s.chart(), s.opposing(), remedy.edit().applyTo(s.design()), s.profile());
    assertThat(rule.judge(after).findings()).extracting(Finding::key).doesNotContain(finding.key());
  }

  @Test
  void no_two_findings_share_a_key() {
    for (RuleCase c : all()) {
      c.firing()
          .values()
          .forEach(
              f -> {
                List<String> keys =
                    Report.of(List.of(f.situation()), List.of()).entries().stream()
                        .map(e -> e.finding().key())
                        .toList();
                assertThat(keys).doesNotHaveDuplicates();
              });
    }
  }

  @Test
  void every_finding_names_what_was_measured_and_what_is_required() {
    for (RuleCase c : all()) {
      c.firing()
          .values()
          .forEach(
              f ->
                  assertThat(c.rule().judge(f.situation()).findings())
                      .allSatisfy(
                          x -> {
                            assertThat(x.comparison().actual()).isNotBlank();
                            assertThat(x.comparison().required()).isNotBlank();
                            assertThat(x.sentence()).contains(": ").endsWith(")");
                          }));
    }
  }
}
