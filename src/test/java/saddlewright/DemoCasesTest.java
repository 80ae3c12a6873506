package saddlewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/**
 * Each demo case carries its class, findings and schedule as text beside it. The cases are
 * invented; what is expected of them follows from the published rules that the findings cite.
 */
class DemoCasesTest {
  private static final Path FOLDER = Path.of("demo-cases");

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void says_what_is_expected(Path file) throws Exception {
    Path expected = Path.of(file.toString().replace(".json", ".expected.txt"));
    String actual = describe(Assessment.of(CaseStore.load(file)));
    if (Boolean.getBoolean("saddlewright.write-expected")) {
      Files.writeString(expected, actual);
    }
    assertThat(actual).isEqualTo(Files.readString(expected, StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void is_sound_unless_its_name_says_fault(Path file) throws Exception {
    Report report = Assessment.of(CaseStore.load(file)).report();
    boolean faulty = file.getFileName().toString().contains("fault");
    assertThat(report.count(Severity.MUST) > 0).isEqualTo(faulty);
  }

  /** The sound cases are charted in full, so that every rule can judge them. */
  @ParameterizedTest
  @MethodSource("cases")
  void leaves_no_question_open_unless_its_name_says_fault(Path file) throws Exception {
    Report report = Assessment.of(CaseStore.load(file)).report();
    boolean faulty = file.getFileName().toString().contains("fault");
    assertThat(report.questions()).matches(q -> faulty || q.isEmpty());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void has_no_two_findings_with_one_key(Path file) throws Exception {
    Report report = Assessment.of(CaseStore.load(file)).report();
    assertThat(report.entries()).extracting(e -> e.finding().key()).doesNotHaveDuplicates();
  }

  @Test
  void there_are_twelve_and_the_index_names_them_all() throws IOException {
    assertThat(cases()).hasSize(12);
    assertThat(Files.readAllLines(FOLDER.resolve("index.txt")))
        .containsExactlyElementsOf(cases().stream().map(c -> c.getFileName().toString()).toList());
  }

  private static String describe(Assessment a) {
    StringBuilder out = new StringBuilder();
    for (Arch arch : Arch.values()) {
      var c = a.arch(arch).classification();
      out.append(arch.code()).append(": ").append(c.label()).append('\n');
      c.reasoning().forEach(r -> out.append("  ").append(r).append('\n'));
    }
    out.append("\nfindings\n");
    a.report().entries().stream()
        .map(
            e ->
                "  "
                    + e.finding().severity().code()
                    + " "
                    + e.finding().key()
                    + " "
                    + e.state()
                    + "\n    "
                    + e.finding().sentence()
                    + "\n")
        .sorted()
        .forEach(out::append);
    out.append("\nquestions\n");
    a.report().questions().forEach(q -> out.append("  ").append(q.sentence()).append('\n'));
    out.append("\nschedule\n");
    Schedule.of(a, Notation.FDI)
        .toText()
        .lines()
        .forEach(l -> out.append(("  " + l).stripTrailing()).append('\n'));
    return out.toString();
  }
}
