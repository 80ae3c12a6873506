package saddlewright.desktop;

import static javafx.scene.input.KeyCode.B;
import static javafx.scene.input.KeyCode.DIGIT3;
import static javafx.scene.input.KeyCode.DIGIT4;
import static javafx.scene.input.KeyCode.DIGIT6;
import static javafx.scene.input.KeyCode.DOWN;
import static javafx.scene.input.KeyCode.ENTER;
import static javafx.scene.input.KeyCode.ESCAPE;
import static javafx.scene.input.KeyCode.RIGHT;
import static javafx.scene.input.KeyCode.SPACE;
import static org.assertj.core.api.Assertions.assertThat;
import static saddlewright.desktop.Keys.Held.CONTROL;
import static saddlewright.desktop.Keys.Held.SHIFT;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;

/** The list beside the sheet selects, finds, charts and places, all by keys. */
class ListOnTheDeskTest {
  private OnStage w;
  private Keys k;

  @BeforeEach
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    k = new Keys(w);
    var c = CaseStore.load(Path.of("demo-cases", "10-fault-lower-class-2.json"));
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          w.table().stepProperty().set(Step.SUPPORT);
          return null;
        });
    w.settle();
    k.press(B, CONTROL);
    Thread.sleep(150);
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private void find(int tens, int ones) throws Exception {
    k.press(javafx.scene.input.KeyCode.valueOf("DIGIT" + tens));
    k.press(javafx.scene.input.KeyCode.valueOf("DIGIT" + ones));
  }

  private Optional<Subject> selected() throws Exception {
    return OnStage.run(() -> w.table().selected());
  }

  @Test
  void it_takes_the_keyboard_when_it_is_shown_and_gives_it_back() throws Exception {
    assertThat(k.focused().getId()).isEqualTo("roll-tree");
    k.press(ESCAPE);
    assertThat(k.focused().getId()).isEqualTo("sheet");
    OnStage.run(
        () -> {
          w.find("roll-tree", Node.class).requestFocus();
          return null;
        });
    k.press(B, CONTROL);
    assertThat(k.focused().getId()).isEqualTo("sheet");
    assertThat(OnStage.run(() -> w.find("roll-tree", Node.class))).isNull();
  }

  @Test
  void typing_a_number_selects_the_tooth_on_the_sheet() throws Exception {
    k.press(DIGIT4);
    k.press(DIGIT6);
    assertThat(selected()).contains(Subject.of(Tooth.T46));
    k.press(DOWN);
    assertThat(selected().flatMap(s -> w.table().component(s)).map(c -> c.teeth()))
        .as("below the tooth stands what lies on it")
        .contains(List.of(Tooth.T46));
  }

  @Test
  void what_is_selected_on_the_sheet_is_chosen_in_the_list() throws Exception {
    OnStage.run(
        () -> {
          w.table().select(Subject.of(Tooth.T43));
          return null;
        });
    w.settle();
    String chosen =
        OnStage.run(
            () -> {
              TreeView<?> tree = w.find("roll-tree", TreeView.class);
              TreeItem<?> item = tree.getSelectionModel().getSelectedItem();
              return String.valueOf(item.getValue());
            });
    assertThat(chosen).contains("43");
  }

  @Test
  void space_offers_what_the_step_places_with_its_ghost_and_enter_takes_it() throws Exception {
    find(4, 4);
    k.press(SPACE);
    assertThat(k.lines()).contains("Mesial occlusal", "Distal occlusal", "State of the tooth");
    for (int i = 0; i < 10 && !k.line().equals("Distal occlusal"); i++) {
      k.press(DOWN);
    }
    k.press(RIGHT);
    assertThat(w.caption()).contains("Rest 44, distal occlusal");
    k.press(ENTER);
    assertThat(w.table().current().lowerDesign().all(Rest.class))
        .filteredOn(r -> r.tooth() == Tooth.T44)
        .extracting(Rest::site)
        .containsExactly(RestSite.DISTAL_OCCLUSAL);
  }

  @Test
  void several_teeth_are_charted_at_once_and_taken_back_at_once() throws Exception {
    find(1, 7);
    k.press(DOWN, SHIFT);
    k.press(DOWN, SHIFT);
    assertThat(OnStage.run(() -> w.table().selectionProperty().get())).hasSize(3);
    k.press(ENTER);
    assertThat(k.lines()).contains("Chart the 3 teeth as");
    k.press(DOWN);
    k.press(RIGHT);
    k.press(ENTER);
    assertThat(w.table().current().chart(Arch.UPPER).standing())
        .doesNotContain(Tooth.T17, Tooth.T16, Tooth.T15)
        .hasSize(13);
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(w.table().current().chart(Arch.UPPER).standing()).hasSize(16);
  }

  @Test
  void what_cannot_be_found_is_said() throws Exception {
    k.press(DIGIT3);
    k.press(javafx.scene.input.KeyCode.Q);
    assertThat(w.texts("roll")).contains("Nothing holds “3q”");
  }
}
