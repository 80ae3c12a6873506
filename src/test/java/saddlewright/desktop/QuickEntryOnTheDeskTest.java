package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;

/** Quick entry worked by keyboard alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class QuickEntryOnTheDeskTest {
  private OnStage w;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
  }

  @AfterAll
  void close() throws Exception {
    OnStage.run(
        () -> {
          w.window.survey().quickEntry().ifPresent(SideWindow::hide);
          return null;
        });
    w.close();
  }

  @BeforeEach
  void lay() throws Exception {
    OnStage.run(
        () -> {
          w.table().lay(Case.blank("case-1"), Optional.empty());
          w.table().select(Subject.of(Tooth.T46));
          Action open =
              Actions.of(w.window.menus()).stream()
                  .filter(a -> a.name().equals(Words.of("sheet.quick-entry").replace("_", "")))
                  .findFirst()
                  .orElseThrow();
          open.run();
          return null;
        });
  }

  private Scene scene() {
    return w.window.survey().quickEntry().orElseThrow().stage().getScene();
  }

  private void press(KeyCode code, boolean shift, boolean control) throws Exception {
    OnStage.run(
        () -> {
          Node on = scene().getFocusOwner();
          Event.fireEvent(
              on, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
          return null;
        });
  }

  private void press(KeyCode... codes) throws Exception {
    for (KeyCode c : codes) {
      press(c, false, false);
    }
  }

  /** Types a text: its first character opens the cell. */
  private void type(String text) throws Exception {
    OnStage.run(
        () -> {
          for (int i = 0; i < text.length(); i++) {
            Event.fireEvent(
                scene().getFocusOwner(),
                new KeyEvent(
                    KeyEvent.KEY_TYPED,
                    text.substring(i, i + 1),
                    "",
                    KeyCode.UNDEFINED,
                    false,
                    false,
                    false,
                    false));
          }
          return null;
        });
  }

  /** Walks down to the row of an item. */
  private void goTo(String title) throws Exception {
    press(KeyCode.HOME, false, true);
    String tooth = "46, ";
    for (int i = 0; i < 2; i++) {
      press(KeyCode.RIGHT);
    }
    for (int i = 0; i < 60; i++) {
      String where = OnStage.run(() -> focusText());
      if (where.startsWith(tooth + title)) {
        return;
      }
      press(KeyCode.DOWN);
    }
    throw new AssertionError("no row " + title);
  }

  private String focusText() {
    return scene().getFocusOwner().getAccessibleText();
  }

  private String sentence() throws Exception {
    return OnStage.run(() -> ((Label) scene().lookup("#entry-sentence")).getText());
  }

  private ToothFindings of(Tooth t) throws Exception {
    return OnStage.run(() -> w.table().current().chart(t.arch()).tooth(t));
  }

  @Test
  void it_opens_at_the_tooth_that_is_selected() throws Exception {
    assertThat(OnStage.run(this::focusText)).startsWith("46, state");
  }

  @Test
  void typing_replaces_enter_goes_down_and_tab_to_the_next_tooth() throws Exception {
    goTo("mesiobuccal undercut");
    type("25");
    press(KeyCode.ENTER);
    type("50");
    press(KeyCode.TAB);
    type("75");
    press(KeyCode.ENTER);
    assertThat(of(Tooth.T46).undercuts())
        .isEqualTo(Map.of(Zone.MESIOBUCCAL, Undercut.of(0.25), Zone.MID_BUCCAL, Undercut.of(0.5)));
    assertThat(of(Tooth.T45).undercuts()).isEqualTo(Map.of(Zone.MID_BUCCAL, Undercut.of(0.75)));
    assertThat(OnStage.run(() -> w.table().undoNameProperty().get()))
        .contains("45: mid-buccal undercut 0.75 mm");
  }

  @Test
  void escape_while_typing_leaves_the_cell_as_it_was() throws Exception {
    goTo("mesiobuccal undercut");
    type("75");
    press(KeyCode.ESCAPE);
    assertThat(of(Tooth.T46).undercuts()).isEmpty();
    assertThat(OnStage.run(() -> w.window.survey().quickEntry().orElseThrow().stage().isShowing()))
        .isTrue();
  }

  @Test
  void an_error_stands_in_its_cell_with_a_sentence_until_escape_restores() throws Exception {
    goTo("mesiobuccal undercut");
    type("9");
    press(KeyCode.ENTER);
    press(KeyCode.UP);
    assertThat(of(Tooth.T46).undercuts()).isEmpty();
    assertThat(sentence()).contains("Undercut depth is 9.0; it must be a number from 0 to 5");
    assertThat(OnStage.run(() -> ((Label) cellAtFocus()).getText())).isEqualTo("× 9");
    press(KeyCode.ESCAPE);
    assertThat(OnStage.run(() -> ((Label) cellAtFocus()).getText())).isEmpty();
    assertThat(sentence()).isEmpty();
  }

  private Node cellAtFocus() {
    return scene().getRoot().lookupAll(".entry-cell").stream()
        .filter(
            n ->
                n.getPseudoClassStates().stream()
                    .anyMatch(p -> p.getPseudoClassName().equals("current")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void an_unlikely_value_is_taken_and_what_was_published_is_told() throws Exception {
    goTo("mesiodistal width");
    type("15");
    press(KeyCode.ENTER);
    press(KeyCode.UP);
    assertThat(of(Tooth.T46).mesiodistal()).contains(15.0);
    assertThat(sentence()).contains("published 11.4 mm (range 9.8 to 14.5)");
    assertThat(OnStage.run(() -> ((Label) cellAtFocus()).getText())).isEqualTo("! 15");
  }

  @Test
  void a_block_is_copied_pasted_and_taken_back_as_one() throws Exception {
    goTo("mesiobuccal undercut");
    int before = OnStage.run(() -> w.table().standingProperty().get());
    OnStage.run(
        () ->
            Clipboard.getSystemClipboard()
                .setContent(Map.of(DataFormat.PLAIN_TEXT, "25\t50\r\n0\t75\r\n")));
    press(KeyCode.V, false, true);
    assertThat(of(Tooth.T46).undercuts())
        .isEqualTo(Map.of(Zone.MESIOBUCCAL, Undercut.of(0.25), Zone.MID_BUCCAL, Undercut.of(0)));
    assertThat(of(Tooth.T45).undercuts())
        .isEqualTo(Map.of(Zone.MESIOBUCCAL, Undercut.of(0.5), Zone.MID_BUCCAL, Undercut.of(0.75)));
    assertThat(OnStage.run(() -> w.table().standingProperty().get())).isEqualTo(before + 1);
    press(KeyCode.C, false, true);
    assertThat(OnStage.run(() -> Clipboard.getSystemClipboard().getString()))
        .isEqualTo("0.25\t0.5\n0\t0.75");
    press(KeyCode.Z, false, true);
    assertThat(of(Tooth.T46).undercuts()).isEmpty();
    assertThat(of(Tooth.T45).undercuts()).isEmpty();
  }

  @Test
  void delete_clears_what_is_chosen_and_fill_goes_along() throws Exception {
    goTo("mesiobuccal undercut");
    type("25");
    press(KeyCode.ENTER);
    press(KeyCode.UP);
    press(KeyCode.RIGHT, true, false);
    press(KeyCode.RIGHT, true, false);
    press(KeyCode.R, false, true);
    assertThat(of(Tooth.T44).undercuts()).containsKey(Zone.MESIOBUCCAL);
    press(KeyCode.DELETE);
    assertThat(of(Tooth.T46).undercuts()).isEmpty();
    assertThat(of(Tooth.T44).undercuts()).isEmpty();
  }

  @Test
  void a_letter_is_enough_for_a_word_and_page_keys_turn_to_the_other_arch() throws Exception {
    press(KeyCode.PAGE_DOWN, false, true);
    assertThat(OnStage.run(this::focusText)).startsWith("18, state");
    type("m");
    press(KeyCode.ENTER);
    type("l");
    press(KeyCode.ENTER);
    assertThat(of(Tooth.T18).status()).isEqualTo(ToothStatus.MISSING);
    assertThat(
            OnStage.run(
                () -> w.table().assessment().arch(Tooth.T18.arch()).chart().isReplaced(Tooth.T18)))
        .isFalse();
  }

  @Test
  void f2_opens_what_stands_there() throws Exception {
    goTo("mesiobuccal undercut");
    type("25");
    press(KeyCode.ENTER);
    press(KeyCode.UP, KeyCode.F2);
    assertThat(OnStage.run(() -> ((TextField) scene().getFocusOwner()).getText()))
        .isEqualTo("0.25");
    press(KeyCode.ESCAPE);
  }
}
