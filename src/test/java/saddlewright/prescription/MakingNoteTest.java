package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.DataTable;
import saddlewright.dentition.Notation;

/** The figures are those of the threshold table; each row of the data names its source. */
class MakingNoteTest {
  private static List<MakingNote> of(String file) throws Exception {
    Assessment a = Assessment.of(CaseStore.load(Path.of("demo-cases", file)));
    return MakingNote.of(a, Schedule.of(a, Notation.FDI));
  }

  @Test
  void a_lower_class_one_is_told_its_bar_its_rests_and_its_plates() throws Exception {
    List<MakingNote> notes = of("01-lower-class-1-rpi.json");
    assertThat(notes)
        .extracting(MakingNote::title)
        .containsExactly(
            "Occlusal rests",
            "Cingulum rests",
            "Arms from below",
            "Guide plates",
            "Bars in the sulcus",
            "Minor connectors",
            "Retention for acrylic",
            "Finish lines",
            "All metal");
    // Numbers 9 and 10 of the schedule are the mesial occlusal rests of 45 and 35.
    assertThat(notes.get(0).numbers()).containsExactly(9, 10);
    // At least 1 mm of metal at the marginal ridge: Davenport et al., Br Dent J 2001.
    assertThat(notes.get(0).words()).startsWith("at least 1 mm thick");
  }

  @Test
  void no_design_needs_no_sizes() {
    Assessment a = Assessment.of(Case.blank("R"));
    assertThat(MakingNote.of(a, Schedule.of(a, Notation.FDI))).isEmpty();
  }

  @Test
  void every_row_has_words_and_a_source() {
    assertThat(DataTable.rows("making-sizes"))
        .hasSizeGreaterThan(15)
        .allSatisfy(
            r -> {
              assertThat(r.get("words")).isNotBlank();
              assertThat(r.get("source")).isNotBlank();
              assertThat(r.get("evidence")).isIn("read", "practice");
            });
  }
}
