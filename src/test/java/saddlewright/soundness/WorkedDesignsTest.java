package saddlewright.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.rules.Finding;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;

/**
 * Designs from the literature, entered as cases, have the class that their source states and no
 * grave finding, save where schools disagree. Each case names its source in its story.
 */
class WorkedDesignsTest {

  /** A grave objection of British teaching that another school does not share. */
  private record Disagreement(String name, String rule, String school, String why) {}

  static List<Path> cases() throws IOException {
    return SoundCases.worked();
  }

  static List<List<String>> classes() throws IOException {
    return rows("classes.csv");
  }

  @ParameterizedTest
  @MethodSource("classes")
  void has_the_class_that_its_source_states(List<String> row) throws Exception {
    Case c = CaseStore.load(SoundCases.WORKED.resolve(row.get(0) + ".json"));
    Arch arch = Arch.valueOf(row.get(1).toUpperCase(java.util.Locale.ROOT));
    Classification found = situation(c, arch, Profile.UK_TEACHING).classification();
    assertThat(found.kennedy().word()).isEqualTo(row.get(2));
    if (!row.get(3).equals("-")) {
      assertThat(found.modifications()).isEqualTo(Integer.parseInt(row.get(3)));
    }
  }

  @Test
  void every_case_has_its_class_in_the_table() throws Exception {
    assertThat(classes().stream().map(r -> r.get(0)))
        .containsExactlyElementsOf(cases().stream().map(SoundCases::name).toList());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void names_its_source_and_what_was_completed(Path file) throws Exception {
    String story = CaseStore.load(file).story();
    assertThat(story).startsWith("Teaching point: ").contains("Source: ");
    assertThat(story).containsAnyOf("ompleted by usual practice", "ompleted:");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void raises_no_grave_finding_but_where_schools_disagree(Path file) throws Exception {
    String name = SoundCases.name(file);
    Set<String> expected =
        disagreements().stream()
            .filter(d -> d.name().equals(name))
            .map(Disagreement::rule)
            .collect(Collectors.toSet());
    List<Finding> grave = grave(CaseStore.load(file), Profile.UK_TEACHING);
    Set<String> found = grave.stream().map(Finding::ruleId).collect(Collectors.toSet());
    assertThat(found).as("%s", grave.stream().map(Finding::sentence).toList()).isEqualTo(expected);
  }

  /** A design that leaves questions open would be passed unjudged. */
  @ParameterizedTest
  @MethodSource("cases")
  void is_charted_so_far_that_every_rule_can_judge(Path file) throws Exception {
    Report report = report(CaseStore.load(file), Profile.UK_TEACHING);
    assertThat(report.questions()).isEmpty();
    assertThat(report.tally().judged()).isPositive();
  }

  @Test
  void the_school_that_is_named_accepts_what_the_other_does_not() throws Exception {
    for (Disagreement d : disagreements()) {
      Case c = CaseStore.load(SoundCases.WORKED.resolve(d.name() + ".json"));
      Profile school = Profile.builtIn(d.school()).orElseThrow();
      assertThat(grave(c, school)).as(d.name()).isEmpty();
      assertThat(d.why()).isNotBlank();
    }
  }

  private static List<Finding> grave(Case c, Profile profile) {
    return report(c, profile).standing().stream()
        .filter(f -> f.severity() == Severity.MUST)
        .toList();
  }

  private static Report report(Case c, Profile profile) {
    return Report.of(
        List.of(situation(c, Arch.UPPER, profile), situation(c, Arch.LOWER, profile)), List.of());
  }

  private static Situation situation(Case c, Arch arch, Profile profile) {
    Arch other = arch == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
    return Situation.of(c.chart(arch), c.chart(other), c.design(arch), profile);
  }

  private static List<Disagreement> disagreements() throws IOException {
    return rows("disagreements.csv").stream()
        .map(r -> new Disagreement(r.get(0), r.get(1), r.get(2), r.get(3)))
        .toList();
  }

  private static List<List<String>> rows(String table) throws IOException {
    return Files.readAllLines(SoundCases.WORKED.resolve(table)).stream()
        .filter(l -> !l.startsWith("#"))
        .skip(1)
        .map(l -> List.of(l.split(";")))
        .toList();
  }
}
