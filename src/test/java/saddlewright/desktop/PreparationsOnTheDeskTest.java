package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.prescription.PreparationPlan.Entry;

/** Mouth preparations and stages, noted in the form. */
class PreparationsOnTheDeskTest {
  private static final Path DEMO = Path.of("demo-cases/01-lower-class-1-rpi.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    run(
        () -> {
          w.window.files().load(DEMO);
          w.table()
              .apply(
                  "x",
                  w.table()
                      .current()
                      .with(
                          w.table()
                              .current()
                              .prescription()
                              .with(Preparations.NONE)
                              .with(StagePlan.EMPTY)));
          return null;
        });
    w.press("step-PRESCRIPTION");
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private static <T> T run(Callable<T> action) throws Exception {
    return OnStage.run(action);
  }

  private Preparations noted() {
    return w.table().current().prescription().preparations();
  }

  private StagePlan plan() {
    return w.table().current().prescription().stages();
  }

  @SuppressWarnings("unchecked")
  private TableView<Entry> list() {
    return w.find("preparations", TableView.class);
  }

  /** Chooses the first preparation of a tooth. */
  private Entry choose(Tooth tooth) throws Exception {
    return run(
        () -> {
          Entry e =
              list().getItems().stream()
                  .filter(x -> x.teeth().equals(java.util.List.of(tooth)))
                  .findFirst()
                  .orElseThrow();
          list().requestFocus();
          list().getSelectionModel().select(e);
          return e;
        });
  }

  private void key(KeyCode code) throws Exception {
    run(
        () -> {
          Event.fireEvent(
              list(), new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
          return null;
        });
  }

  private void type(String id, String text) throws Exception {
    run(
        () -> {
          TextInputControl field = w.find(id, TextInputControl.class);
          field.requestFocus();
          field.clear();
          for (char c : text.toCharArray()) {
            field.appendText(Character.toString(c));
          }
          return null;
        });
  }

  private String focus() throws Exception {
    return run(() -> w.window.sheet().getScene().getFocusOwner().getId());
  }

  private String words(String id) throws Exception {
    return run(() -> w.find(id, Labeled.class).getText());
  }

  @Test
  void a_key_notes_that_a_preparation_is_done_today_and_one_undo_takes_it_back() throws Exception {
    Entry e = choose(Tooth.T35);
    key(KeyCode.D);
    assertThat(noted().mark(e.key()).state()).isEqualTo(PreparationMark.State.DONE);
    assertThat(noted().mark(e.key()).on()).contains(LocalDate.now());
    assertThat(run(() -> w.table().undoNameProperty().get())).contains("Preparation: " + e.place());
    run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(noted()).isEqualTo(Preparations.NONE);
  }

  @Test
  void what_is_declined_asks_for_its_reason() throws Exception {
    Entry e = choose(Tooth.T35);
    key(KeyCode.X);
    assertThat(noted().mark(e.key()).state()).isEqualTo(PreparationMark.State.DECLINED);
    assertThat(focus()).isEqualTo("preparation-note");
    assertThat(gaps()).contains("Declined without a reason: note why.");
    type("preparation-note", "patient refuses");
    assertThat(noted().mark(e.key()).note()).isEqualTo("patient refuses");
    assertThat(gaps()).doesNotContain("without a reason");
  }

  private String gaps() throws Exception {
    return run(
        () ->
            w.find("preparation-detail", javafx.scene.layout.VBox.class).getChildren().stream()
                .filter(n -> n.getStyleClass().contains("field-error") && n.isVisible())
                .map(n -> ((Labeled) n).getText())
                .findFirst()
                .orElse(""));
  }

  @Test
  void own_words_are_taken_back_by_their_button_and_typing_is_one_edit() throws Exception {
    Entry e = choose(Tooth.T35);
    type("preparation-words", "in composite");
    assertThat(noted().mark(e.key()).target()).isEqualTo("in composite");
    w.press("preparation-back");
    assertThat(noted()).isEqualTo(Preparations.NONE);
    run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(noted().mark(e.key()).target()).isEqualTo("in composite");
    run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(noted()).isEqualTo(Preparations.NONE);
  }

  @Test
  void what_is_chosen_is_selected_on_the_sheet() throws Exception {
    Entry e = choose(Tooth.T35);
    assertThat(run(() -> w.table().selected()))
        .contains(new Subject.OfComponent(e.arch(), e.components().get(0)));
  }

  @Test
  void one_of_ones_own_is_added_and_removed_until_it_has_been_done() throws Exception {
    w.press("own-add");
    assertThat(focus()).isEqualTo("own-teeth");
    type("own-teeth", "99");
    w.press("own-add");
    assertThat(noted().own()).isEmpty();
    type("own-teeth", "34");
    type("own-target", "smooth the old filling");
    w.press("own-add");
    assertThat(noted().own())
        .extracting(OwnPreparation::target)
        .containsExactly("smooth the old filling");
    assertThat(run(() -> list().getSelectionModel().getSelectedItem().key())).isEqualTo("own/p-1");
    key(KeyCode.D);
    assertThat(run(() -> w.find("preparation-remove", Node.class).isDisabled())).isTrue();
    key(KeyCode.P);
    w.press("preparation-remove");
    assertThat(noted()).isEqualTo(Preparations.NONE);
  }

  @Test
  void the_state_can_be_chosen_without_keys() throws Exception {
    Entry e = choose(Tooth.T35);
    run(
        () -> {
          @SuppressWarnings("unchecked")
          ComboBox<PreparationMark.State> box = w.find("preparation-state", ComboBox.class);
          box.setValue(PreparationMark.State.CHECKED);
          return null;
        });
    assertThat(noted().mark(e.key()).state()).isEqualTo(PreparationMark.State.CHECKED);
  }

  @Test
  void stages_take_days_and_are_done_today() throws Exception {
    type("stage-FINISH-days", "5");
    type("stage-SETTING_UP-days", "3");
    assertThat(plan().at(TreatmentStage.FINISH).days()).contains(5);
    w.press("stage-PRIMARY_IMPRESSION-today");
    assertThat(plan().at(TreatmentStage.PRIMARY_IMPRESSION).done()).contains(LocalDate.now());
    assertThat(run(() -> w.table().undoNameProperty().get())).contains("Primary impressions: done");
    assertThat(words("stage-wanting")).startsWith("Set the day of the fitting");
    w.press("stage-visits-zero");
    assertThat(plan().at(TreatmentStage.TOOTH_TRY_IN).days()).contains(0);
    assertThat(plan().at(TreatmentStage.FRAMEWORK).days()).isEqualTo(Optional.empty());
  }

  @Test
  void the_days_of_the_last_case_are_offered_and_not_taken_by_themselves() throws Exception {
    type("stage-FINISH-days", "5");
    run(
        () -> {
          w.find("next-gap", Node.class).requestFocus();
          list().requestFocus();
          return null;
        });
    assertThat(Files.readString(folder.resolve("settings").resolve("stage-days.properties")))
        .isEqualTo("FINISH=5\n");
    run(
        () -> {
          w.table()
              .apply(
                  "x",
                  w.table()
                      .current()
                      .with(w.table().current().prescription().with(StagePlan.EMPTY)));
          return null;
        });
    assertThat(plan()).isEqualTo(StagePlan.EMPTY);
    w.press("stage-last-days");
    assertThat(plan().at(TreatmentStage.FINISH).days()).contains(5);
  }
}
