package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.StagePlan;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Dates;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.Timetable;

/** The chairside page and the page of dates, read back from the document. */
class PreparationsOnPaperTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final String SEAT = "lower/rest-seat/35/mesial-occlusal/rest";

  private static String words(Case c) throws Exception {
    return PrintedPage.packed(PrescriptionPdf.toBytes(Assessment.of(c), DAY));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01-lower-class-1-rpi",
        "05-upper-class-1-immediate",
        "07-upper-class-3-drifted",
        "12-fault-both-arches"
      })
  void every_preparation_stands_there_with_its_target_purpose_and_cautions(String name)
      throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases", name + ".json"));
    String printed = words(c);
    PreparationPlan plan = PreparationPlan.of(Assessment.of(c), Notation.FDI);
    assertThat(plan.entries()).isNotEmpty();
    for (PreparationPlan.Entry e : plan.entries()) {
      assertThat(printed)
          .contains(PrintedPage.packed(e.target().substring(1)), PrintedPage.packed(e.purpose()));
    }
    plan.cautions().forEach(w -> assertThat(printed).contains(PrintedPage.packed(w.sentence())));
  }

  @Test
  void what_is_noted_is_printed_and_what_is_not_is_left_to_be_written_in() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    PreparationMark declined =
        PreparationMark.planned(SEAT)
            .withState(PreparationMark.State.DECLINED)
            .withOn(Optional.of(LocalDate.of(2026, 10, 28)))
            .withTarget("in composite only")
            .withNote("the patient wants no cutting");
    Case noted = c.with(c.prescription().with(c.prescription().preparations().with(declined)));
    assertThat(words(noted))
        .contains(
            PrintedPage.packed("In composite only (own words)"),
            PrintedPage.packed("28 October 2026"),
            PrintedPage.packed("the patient wants no cutting"));
  }

  @Test
  void a_former_preparation_is_printed_as_one() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    PreparationMark cut =
        PreparationMark.planned("lower/rest-seat/31/cingulum/rest")
            .withState(PreparationMark.State.DONE)
            .withOn(Optional.of(LocalDate.of(2026, 10, 28)));
    Case noted = c.with(c.prescription().with(c.prescription().preparations().with(cut)));
    assertThat(words(noted)).contains(PrintedPage.packed("No longer asked for by the design"));
  }

  @Test
  void stages_are_printed_with_the_days_of_the_timetable() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    String printed = words(c);
    for (Timetable.Row r : Timetable.of(Assessment.of(c), Notation.FDI, DAY).rows()) {
      assertThat(printed).contains(PrintedPage.packed(r.stage().title()));
      r.due()
          .filter(d -> !r.isDone())
          .ifPresent(d -> assertThat(printed).contains(PrintedPage.packed(Dates.brief(d))));
    }
    Case bare = c.with(c.prescription().with(StagePlan.EMPTY));
    assertThat(words(bare)).contains(PrintedPage.packed("No day set for the fitting"));
  }
}
