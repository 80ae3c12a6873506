package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.Note;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;

/**
 * What each gesture changes on the sheet, as the text of the drawing before and after: golden files
 * beside the tests, written anew with {@code -Dsaddlewright.write-expected=true}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GesturesTest {
  private static final Path GOLDEN = Path.of("src/test/resources/saddlewright/desktop/gestures");

  private OnStage w;
  private List<String> before = List.of();

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  /** A lower arch without 34–38 and 45–48. */
  private void fresh() throws Exception {
    ArchChart c = ArchChart.full(Arch.LOWER);
    for (int fdi : new int[] {34, 35, 36, 37, 38, 45, 46, 47, 48}) {
      c = c.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    Case start = Case.blank("case-1").with(c);
    OnStage.run(
        () -> {
          w.table().lay(start, Optional.empty());
          w.table().shownProperty().set(Worktable.Shown.LOWER);
          return null;
        });
    w.settle();
    note();
  }

  private List<String> now() {
    return DrawingText.of(w.table().assessment().lower().layout());
  }

  private void note() {
    before = now();
  }

  private ArchDesign design() {
    return w.table().current().lowerDesign();
  }

  private void select(Component c) throws Exception {
    OnStage.run(
        () -> {
          w.table().select(Subject.of(Arch.LOWER, c));
          return null;
        });
    w.settle();
  }

  private void undo() throws Exception {
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    w.settle();
  }

  /** Compares what has changed with the golden file, and holds undo to take all of it back. */
  private void golden(String name) throws Exception {
    String difference = DrawingText.difference(before, now());
    Path file = GOLDEN.resolve(name + ".txt");
    if (Boolean.getBoolean("saddlewright.write-expected")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(file, difference);
    }
    assertThat(difference).isEqualTo(Files.readString(file, StandardCharsets.UTF_8)).isNotEmpty();
    undo();
    assertThat(DrawingText.difference(before, now())).as("one undo takes it back").isEmpty();
  }

  @Test
  void dragging_along_the_ridge_lays_a_saddle_over_exactly_those_places() throws Exception {
    fresh();
    w.press("step-SADDLES");
    w.press("tool-saddle-SADDLE");
    w.drag(35, 36, 37);
    assertThat(design().all(Saddle.class))
        .extracting(s -> s.span().toString())
        .containsExactly("35–37");
    golden("saddle-dragged");
  }

  @Test
  void a_drag_over_standing_teeth_ends_at_the_gap() throws Exception {
    fresh();
    w.press("step-SADDLES");
    w.press("tool-saddle-SADDLE");
    w.drag(36, 35, 34, 33, 32);
    assertThat(design().all(Saddle.class))
        .extracting(s -> s.span().toString())
        .containsExactly("34–36");
    w.hover(32, 0, 0);
    assertThat(w.caption()).contains("32 stands");
    w.hover(35, 0, 0);
    assertThat(w.caption()).contains("is there already");
    w.drag(35, 36, 37);
    assertThat(design().all(Saddle.class)).as("no saddle over a saddle").hasSize(1);
  }

  @Test
  void charting_by_dragging_is_one_edit() throws Exception {
    fresh();
    w.press("step-CHART");
    w.press("tool-chart-missing");
    w.drag(31, 32, 33);
    golden("chart-dragged");
  }

  @Test
  void a_click_places_what_the_ghost_showed() throws Exception {
    fresh();
    w.press("step-RETENTION");
    w.press("tool-clasp-proposed");
    w.hover(33, 0.1, 1.1);
    String promised = w.caption();
    w.click(33, 0.1, 1.1);
    Clasp clasp = design().all(Clasp.class).get(0);
    var laid = w.table().assessment().lower().layout().find(clasp.id()).orElseThrow();
    for (String fact :
        saddlewright.desktop.subject.Facts.chief(laid, w.table().assessment().lower().layout())) {
      assertThat(promised).contains(fact);
    }
    golden("clasp-clicked");
  }

  @Test
  void with_alt_both_sides_are_placed_as_one_edit() throws Exception {
    fresh();
    w.press("step-SUPPORT");
    w.press("tool-rest-STANDARD");
    w.with(
        OnStage.Held.ALT,
        () -> {
          w.hover(33, 0, -0.5);
          assertThat(w.caption()).contains("both sides");
          w.click(33, 0, -0.5);
          return null;
        });
    assertThat(design().all(Rest.class))
        .extracting(Rest::tooth)
        .containsExactlyInAnyOrder(Tooth.T33, Tooth.T43);
    golden("rest-both-sides");
  }

  @Test
  void with_alt_it_says_why_the_other_side_cannot_have_it() throws Exception {
    fresh();
    w.press("step-SUPPORT");
    w.press("tool-rest-STANDARD");
    w.with(
        OnStage.Held.ALT,
        () -> {
          w.hover(44, -0.6, 0);
          assertThat(w.caption()).contains("This side only").contains("34").contains("missing");
          w.click(44, -0.6, 0);
          return null;
        });
    assertThat(design().all(Rest.class)).extracting(Rest::tooth).containsExactly(Tooth.T44);
  }

  @Test
  void with_alt_a_saddle_is_dragged_on_both_sides() throws Exception {
    fresh();
    w.press("step-SADDLES");
    w.press("tool-saddle-SADDLE");
    w.with(
        OnStage.Held.ALT,
        () -> {
          w.drag(36, 37);
          return null;
        });
    assertThat(design().all(Saddle.class))
        .extracting(s -> s.span().toString())
        .containsExactlyInAnyOrder("36–37", "47–46");
  }

  @Test
  void a_lost_tooth_says_why_it_bears_nothing() throws Exception {
    fresh();
    w.press("step-SUPPORT");
    w.hover(36, 0, 0);
    assertThat(w.caption()).contains("36").contains("missing");
    w.press("step-RETENTION");
    w.hover(36, 0, 1);
    assertThat(w.caption()).contains("36").contains("missing");
    w.press("step-SUPPORT");
    w.press("tool-rest-STANDARD");
    w.hover(44, 0, -0.7);
    assertThat(w.caption()).contains("there is no cingulum");
    w.press("tool-rest-DOUBLE");
    w.hover(33, 0, 0);
    assertThat(w.caption()).contains("no occlusal surface");
    w.press("step-CONNECTORS");
    w.press("tool-connector-LINGUAL_BAR");
    w.clickMidline(Arch.LOWER, 25);
    w.hover(33, 0, 0);
    assertThat(w.caption()).contains("is there already: click selects it");
  }

  @Test
  void tab_says_which_of_how_many_it_shows() throws Exception {
    fresh();
    w.press("step-RETENTION");
    w.press("tool-clasp-proposed");
    w.hover(33, 0.1, 1.1);
    assertThat(w.caption()).containsPattern("1 of \\d, Tab for the next");
    w.key(KeyCode.TAB);
    assertThat(w.caption()).containsPattern("2 of \\d, Tab for the next");
  }

  @Test
  void several_are_selected_mirrored_and_removed_together() throws Exception {
    fresh();
    w.press("step-SUPPORT");
    w.press("tool-rest-STANDARD");
    w.click(33, 0, -0.5);
    note();
    OnStage.run(
        () -> {
          new saddlewright.desktop.subject.SelectionEdits(w.table()).mirror(false);
          return null;
        });
    w.settle();
    assertThat(design().all(Rest.class)).hasSize(2);
    golden("mirrored");
    Rest rest = design().all(Rest.class).get(0);
    select(rest);
    w.press("tool-rest-select");
    w.with(
        OnStage.Held.SHIFT,
        () -> {
          w.click(32, 0, 0);
          return null;
        });
    assertThat(OnStage.run(() -> w.table().selectionProperty().get()))
        .contains(Subject.of(Arch.LOWER, rest), Subject.of(Tooth.T32));
  }

  @Test
  void a_bar_is_set_lower_and_a_saddle_made_shorter_by_their_handles() throws Exception {
    fresh();
    w.press("step-SADDLES");
    w.press("tool-saddle-COMPLETE");
    w.click(36, 0, 0);
    w.click(46, 0, 0);
    w.press("step-CONNECTORS");
    w.press("tool-connector-LINGUAL_BAR");
    w.clickMidline(Arch.LOWER, 25);
    note();
    select(design().all(MajorConnector.class).get(0));
    w.pull("clearance", 0, -2, false);
    w.letGo("clearance");
    golden("bar-lowered");
    select(design().all(Saddle.class).get(0));
    w.key(w.handle("left-end"), KeyCode.DOWN, false);
    golden("saddle-shortened");
  }

  @Test
  void a_note_is_moved_by_its_words_and_by_its_leader() throws Exception {
    fresh();
    w.press("step-REVIEW");
    w.press("tool-note");
    w.click(33, 0, 1.2);
    w.press("tool-review-select");
    note();
    Note n = design().all(Note.class).get(0);
    select(n);
    w.pull("words", 5, 0, false);
    w.letGo("words");
    assertThat(design().all(Note.class).get(0).pointsAtX()).isEqualTo(n.pointsAtX());
    golden("note-moved");
    select(n);
    w.pull("points-at", 0, -4, false);
    w.letGo("points-at");
    assertThat(design().all(Note.class).get(0).x()).isEqualTo(n.x());
    golden("note-pointed");
  }

  @Test
  void what_is_selected_on_a_tooth_is_dragged_to_another() throws Exception {
    fresh();
    w.press("step-RETENTION");
    w.press("tool-clasp-THREE_ARM");
    w.click(44, 0.7, 0.9);
    note();
    int parts = design().components().size();
    Clasp clasp = design().all(Clasp.class).get(0);
    w.press("tool-clasp-select");
    w.dragFrom(Arch.LOWER, clasp.id(), 43);
    assertThat(design().components()).hasSize(parts);
    assertThat(design().all(Clasp.class)).extracting(Clasp::tooth).containsExactly(Tooth.T43);
    assertThat(design().all(Rest.class))
        .as("the rest went along, since it was selected with it")
        .extracting(Rest::tooth)
        .containsExactly(Tooth.T43);
    golden("unit-dragged");
  }
}
