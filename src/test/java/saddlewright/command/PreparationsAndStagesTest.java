package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Rest;

/** The preparations and stages commands. */
class PreparationsAndStagesTest {
  @TempDir Path folder;

  private Path saved(Case c) throws Exception {
    Path file = folder.resolve("case.json");
    CaseStore.save(c, file);
    return file;
  }

  private static Case seat() {
    Case c = Case.blank("T-1");
    c =
        c.with(
            c.lowerDesign()
                .plus(Rest.of(ComponentId.of("r"), Tooth.T36, RestSite.MESIAL_OCCLUSAL)));
    return c.with(
        c.prescription()
            .with(
                c.prescription()
                    .preparations()
                    .with(
                        PreparationMark.planned("lower/rest-seat/36/mesial-occlusal/rest")
                            .withState(PreparationMark.State.DECLINED)
                            .withOn(Optional.of(LocalDate.of(2026, 11, 3)))
                            .withNote("patient refuses"))));
  }

  @Test
  void preparations_are_printed_in_order_with_what_is_noted() throws Exception {
    assertThat(Run.of("preparations", saved(seat())))
        .isEqualTo(
            new Run(
                0,
                """
                Mouth preparations, in the order in which they are done; teeth by ISO 3950 (FDI).

                Rest seats and clearance
                  1  36 mesial occlusal: declined on 3 November 2026
                     cut a spoon-shaped seat at least 2.5 mm wide and as long, 1–1.5 mm deep at the marginal ridge, deepest inside
                     for: rest (no. 1)
                     note: patient refuses
                     caution A, B

                Finishing
                  2  36: planned
                     round and polish every cut surface, apply fluoride, protect any exposed dentine; check room and path on a study cast before the master impression
                     for: all prepared teeth

                Cautions
                  A  Occlusal seats are rounded triangles, half the distance between cusps wide, without a sharp edge; the floor meets the minor connector at less than 90°.
                  B  Check on softened wax that 1 mm of metal finds room; do not gain it from the buccal cusps of lower teeth.
                """,
                ""));
  }

  @Test
  void a_case_without_a_design_asks_for_none() throws Exception {
    assertThat(Run.of("preparations", saved(Case.blank("T-1"))))
        .isEqualTo(new Run(0, "No mouth preparations: the design asks for none.\n", ""));
  }

  @Test
  void stages_are_read_as_of_a_day() throws Exception {
    Case c = seat();
    c =
        c.with(
            c.prescription()
                .with(
                    c.prescription()
                        .stages()
                        .with(
                            TreatmentStage.PRIMARY_IMPRESSION,
                            PlannedStage.OPEN.withDue(Optional.of(LocalDate.of(2026, 10, 5))))));
    Path file = saved(c);
    Run before = Run.of("stages", file, "--date", "2026-10-05");
    assertThat(before.code()).isZero();
    assertThat(before.out())
        .startsWith(
            """
            Stages as on 5 October 2026; no day set for the fitting; Monday to Friday count.

                      Stage                                              Where      Days  Due                    Done
            next      Primary impressions                                clinic        –  Mon 5 Oct 2026         –
            open      Special trays and rims                             laboratory    –  –                      –
            """)
        .contains("closed: The design is not signed. Have it signed.")
        .endsWith("\nSet the day of the fitting, from which the others are counted back.\n");
    assertThat(Run.of("stages", file, "--date", "2026-10-06").out())
        .contains("\noverdue   Primary impressions ");
  }

  @Test
  void wrong_usage_is_told_in_a_sentence() {
    assertThat(Run.of("stages", "no-such.json").err()).contains("no-such.json");
    assertThat(Run.of("stages", "no-such.json", "--date", "soon").err())
        .isEqualTo(
            "Invalid value for option '--date': \"soon\" is no date; write year-month-day, such as"
                + " 2026-03-31. See saddlewright stages --help.\n");
    assertThat(Run.of("preparations").err())
        .isEqualTo("Missing required parameter: 'CASE'. See saddlewright preparations --help.\n");
  }
}
