package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Notation;

/** The schedule in an e-mail: nothing lost, nothing that a mail program would spoil. */
class ScheduleMailTest {
  @ParameterizedTest
  @EnumSource(Notation.class)
  void every_line_is_short_and_has_no_tabs_and_no_component_is_lost(Notation notation)
      throws Exception {
    for (Path file : demos()) {
      Assessment a = Assessment.of(CaseStore.load(file));
      String mail = ScheduleMail.of(a, notation);
      // RFC 5322, 2.1.1: lines should be no longer than 78 characters.
      assertThat(mail.lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(76);
      assertThat(mail).doesNotContain("\t").doesNotContain("  \n").endsWith("\n");
      String flat = mail.replaceAll("\\s+", " ");
      for (Schedule.Line l : Schedule.of(a, notation).lines()) {
        String words = l.number() + ") " + l.place() + ": " + l.text();
        assertThat(flat).contains(words.replaceAll("\\s+", " "));
      }
      assertThat(flat)
          .contains(Revision.of(a.subject()).hash())
          .contains(ToothWords.name(notation));
    }
  }

  @Test
  void a_title_of_one_endless_word_is_cut() throws Exception {
    Case c = CaseStore.load(demos().get(0)).withIdentity("C-1", "x".repeat(200), "");
    assertThat(ScheduleMail.of(Assessment.of(c), Notation.FDI).lines())
        .allMatch(l -> l.length() <= 76)
        .contains("x".repeat(76));
  }

  private static List<Path> demos() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
  }
}
