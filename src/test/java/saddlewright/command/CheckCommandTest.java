package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Waiver;

/** The check command: exact words and exit codes, which other programs rely on. */
class CheckCommandTest {
  @TempDir Path folder;
  private Path blank;
  private Path faulty;
  private Case unsupported;

  @BeforeEach
  void write() throws Exception {
    blank = folder.resolve("blank.json");
    CaseStore.save(Case.blank("T-1"), blank);
    ArchChart chart =
        ArchChart.full(Arch.LOWER)
            .with(Tooth.T46, ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    unsupported =
        Case.blank("T-2")
            .with(chart)
            .with(
                Arch.LOWER,
                new DesignEdit.Place(Saddle.of(ComponentId.of("s"), Span.of(Tooth.T46))));
    faulty = folder.resolve("faulty.json");
    CaseStore.save(unsupported, faulty);
  }

  @Test
  void a_case_with_nothing_to_replace_is_clean() {
    Run run = Run.of("check", blank);
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            blank
                + ": T-1\n"
                + "Upper: no class: nothing to replace\n"
                + "Lower: no class: nothing to replace\n"
                + "School profile: UK teaching, version 1\n"
                + "No findings.\n"
                + "Rules: 0 judged, 0 wait for a value, "
                + RuleBook.rules().size()
                + " do not apply, 0 not taught.\n"
                + "\n"
                + "Drafting and teaching aid. The design is the responsibility of the licensed"
                + " prescriber; local regulations and clinical judgement come first.\n"
                + "Findings are general teaching rules and not advice on a patient.\n");
  }

  @Test
  void an_unsupported_saddle_exits_one_and_is_named() {
    Run run = Run.of("check", faulty);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains("Lower: Kennedy Class III\n")
        .contains("[lower, bounded-saddles-are-rested-at-both-ends]");
  }

  @Test
  void json_says_the_same() throws Exception {
    Run run = Run.of("check", "--format", "json", faulty, blank);
    assertThat(run.code()).isEqualTo(1);
    JsonNode root = new ObjectMapper().readTree(run.out());
    assertThat(root.at("/cases/0/lower/class").asText()).isEqualTo("III");
    assertThat(root.at("/cases/1/lower/class").asText()).isEqualTo("none");
    assertThat(root.at("/cases/1/findings")).isEmpty();
    JsonNode first = root.at("/cases/0/findings/0");
    assertThat(first.get("severity").asText()).isEqualTo("must");
    assertThat(first.get("key").asText()).startsWith(first.get("rule").asText() + "@lower/");
    assertThat(first.get("required").asText()).isNotBlank();
  }

  @Test
  void the_level_decides_the_exit_code() throws Exception {
    Case waived =
        unsupported.withWaivers(
            Assessment.of(unsupported).report().entries().stream()
                .map(
                    e ->
                        new Waiver(
                            e.finding().key(),
                            "discussed",
                            "tutor",
                            LocalDate.of(2026, 11, 2),
                            e.finding().facts()))
                .collect(Collectors.toList()));
    Path file = folder.resolve("waived.json");
    CaseStore.save(waived, file);
    Run run = Run.of("check", "--fail-on", "consider", file);
    // What could be swallowed stays open whatever anyone signs; all else here is waived.
    List<String> open =
        run.out().lines().filter(l -> l.startsWith("MUST") || l.startsWith("SHOULD")).toList();
    assertThat(open).allMatch(l -> l.contains("dentures-are-not-one-sided"));
    assertThat(run.out()).contains("waived: discussed (tutor, 2026-11-02)");
    assertThat(run.code()).isEqualTo(open.isEmpty() ? 0 : 1);
  }

  @Test
  void an_unreadable_case_exits_two_but_the_others_are_checked() throws Exception {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{ this is not JSON");
    Run run = Run.of("check", broken, blank);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("broken.json").contains("not JSON").doesNotContain("\tat ");
    assertThat(run.out()).contains("T-1");
  }

  @Test
  void wrong_usage_exits_two() {
    assertThat(Run.of("check").code()).isEqualTo(2);
    assertThat(Run.of("check", "--format", "xml", blank).code()).isEqualTo(2);
    assertThat(Run.of("check", "--fail-on", "never", blank).err()).contains("--fail-on");
  }
}
