package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.ActionFinder;
import saddlewright.desktop.actions.Actions;
import saddlewright.desktop.actions.MoreKeys;

/** Every action of the menus can be chosen in every state of the window, and none throws. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryActionTest {
  /** Somebody who leaves every question which file is meant. */
  private static final FileQuestion.Answering LEFT =
      new FileQuestion.Answering() {
        @Override
        public Optional<Path> toOpen(FileChooser question) {
          return Optional.empty();
        }

        @Override
        public Optional<Path> toSave(FileChooser question) {
          return Optional.empty();
        }
      };

  private OnStage w;
  private Stage main;
  private Timeline closing;
  private final List<Throwable> thrown = new ArrayList<>();

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    OnStage.run(
        () -> {
          main = (Stage) w.find("sheet", javafx.scene.Node.class).getScene().getWindow();
          Thread.currentThread().setUncaughtExceptionHandler((t, e) -> thrown.add(e));
          FileQuestion.answerBy(Optional.of(LEFT));
          closing = new Timeline(new KeyFrame(Duration.millis(40), e -> closeOthers()));
          closing.setCycleCount(Animation.INDEFINITE);
          return null;
        });
  }

  @AfterAll
  void close() throws Exception {
    OnStage.run(
        () -> {
          closing.stop();
          closeOthers();
          FileQuestion.answerBy(Optional.empty());
          return null;
        });
    w.close();
  }

  /** Dialogs wait for an answer: they are closed as by their cross. */
  private void closeOthers() {
    for (Window other : List.copyOf(Window.getWindows())) {
      if (other != main) {
        other.hide();
      }
    }
  }

  private List<Action> actions() throws Exception {
    return OnStage.run(() -> Actions.of(w.window.menus()));
  }

  /** Chooses each action anew from the state; those that end the window are left out. */
  private void chooseAllIn(Callable<Void> state) throws Exception {
    OnStage.run(
        () -> {
          closing.play();
          return null;
        });
    OnStage.run(state);
    List<Action> now = actions();
    assertThat(now).hasSizeGreaterThan(80);
    int done = 0;
    for (int i = 0; i < now.size(); i++) {
      Action a = now.get(i);
      if (!a.ready()
          || a.name().equals(plain("file.quit"))
          || a.name().equals(plain("file.close"))) {
        continue;
      }
      List<Object> before = OnStage.run(this::whatLies);
      OnStage.run(
          () -> {
            a.run();
            return null;
          });
      assertThat(thrown).as(a.place() + " " + a.name()).isEmpty();
      done++;
      if (!OnStage.run(this::whatLies).equals(before)) {
        OnStage.run(state);
        now = actions();
      }
    }
    assertThat(done).isGreaterThan(5);
    OnStage.run(
        () -> {
          closing.stop();
          closeOthers();
          return null;
        });
  }

  /** What an action may change that others depend on. */
  private List<Object> whatLies() {
    Worktable t = w.table();
    return List.of(
        t.current(),
        t.stepProperty().get(),
        t.selectionProperty().get(),
        t.openProperty().get(),
        t.shownProperty().get());
  }

  private static String plain(String key) {
    return Words.of(key).replace("_", "");
  }

  private Callable<Void> laid(Case c, Step step, Optional<Subject> selected) {
    return () -> {
      w.table().lay(c, Optional.empty());
      w.table().stepProperty().set(step);
      selected.ifPresent(w.table()::select);
      return null;
    };
  }

  private static Case demo(String name) throws Exception {
    return CaseStore.load(Path.of("demo-cases", name));
  }

  @Test
  void on_the_welcome_page() throws Exception {
    chooseAllIn(
        () -> {
          w.table().close();
          return null;
        });
  }

  @Test
  void with_an_empty_case() throws Exception {
    chooseAllIn(laid(Case.blank("case-1"), Step.CHART, Optional.empty()));
  }

  @Test
  void with_a_component_selected() throws Exception {
    Case c = demo("10-fault-lower-class-2.json");
    Subject clasp = Subject.of(Arch.LOWER, c.lowerDesign().components().get(0));
    chooseAllIn(laid(c, Step.RETENTION, Optional.of(clasp)));
  }

  @Test
  void while_the_prescription_is_filled_in() throws Exception {
    chooseAllIn(laid(demo("10-fault-lower-class-2.json"), Step.PRESCRIPTION, Optional.empty()));
  }

  @Test
  void no_key_is_bound_twice() throws Exception {
    Map<String, String> bound = new HashMap<>();
    for (Action a : actions()) {
      for (KeyCombination k : a.keys()) {
        // A name that is no key's is taken for a letter that no keyboard sends.
        assertThat(k).as(a.name()).isInstanceOf(KeyCodeCombination.class);
        String before = bound.put(k.getName(), a.name());
        assertThat(before).as(k + " does " + before + " and " + a.name()).isNull();
      }
    }
    assertThat(bound).hasSizeGreaterThan(40);
  }

  @Test
  void no_access_key_stands_twice_in_a_menu() throws Exception {
    OnStage.run(
        () -> {
          for (javafx.scene.control.Menu m : w.window.menus().getMenus()) {
            Set<Character> seen = new HashSet<>();
            for (MenuItem item : m.getItems()) {
              String t = item.getText();
              int at = t == null || !item.isMnemonicParsing() ? -1 : t.indexOf('_');
              if (at >= 0 && at + 1 < t.length()) {
                char c = Character.toLowerCase(t.charAt(at + 1));
                assertThat(seen.add(c)).as(m.getText() + ": " + t).isTrue();
              }
            }
          }
          return null;
        });
  }

  @Test
  void an_action_is_found_by_part_of_its_name_and_done_by_the_enter_key() throws Exception {
    OnStage.run(laid(demo("10-fault-lower-class-2.json"), Step.REVIEW, Optional.empty()));
    boolean dark = OnStage.run(() -> w.table().darkDeskProperty().get());
    action("help.find").run();
    ActionFinder finder = OnStage.run(() -> w.window.finder().orElseThrow());
    assertThat(OnStage.run(finder::isShowing)).isTrue();
    OnStage.run(
        () -> {
          TextField field = (TextField) finder.content().lookup("#find-action");
          field.setText("dark");
          javafx.event.Event.fireEvent(
              field,
              new KeyEvent(
                  KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
          return null;
        });
    assertThat(OnStage.run(finder::isShowing)).isFalse();
    assertThat(OnStage.run(() -> w.table().darkDeskProperty().get())).isEqualTo(!dark);
  }

  private Action action(String key) throws Exception {
    Action found =
        actions().stream().filter(a -> a.name().equals(plain(key))).findFirst().orElseThrow();
    return new Action(
        found.path(),
        found.name(),
        found.keys(),
        found.ready(),
        found.on(),
        () -> {
          try {
            OnStage.run(
                () -> {
                  found.deed().run();
                  return null;
                });
          } catch (Exception e) {
            throw new AssertionError(e);
          }
        });
  }

  @Test
  void the_further_key_of_redo_works() throws Exception {
    OnStage.run(laid(Case.blank("case-1"), Step.CHART, Optional.empty()));
    OnStage.run(
        () -> {
          w.table().apply("x", Case.blank("case-2"));
          w.table().undo();
          Runnable redo =
              main.getScene().getAccelerators().get(KeyCombination.valueOf("Shortcut+Y"));
          redo.run();
          return null;
        });
    assertThat(w.table().current().reference()).isEqualTo("case-2");
    assertThat(OnStage.run(() -> Actions.items(w.window.menus())))
        .anyMatch(i -> MoreKeys.add(i, "Shortcut+F12") == i);
  }

  @Test
  void the_history_leads_to_any_state_and_marks_what_was_saved(@TempDir Path folder)
      throws Exception {
    OnStage.run(laid(Case.blank("case-1"), Step.CHART, Optional.empty()));
    OnStage.run(
        () -> {
          w.table().apply("the first", Case.blank("case-2"));
          w.table().apply("the second", Case.blank("case-3"));
          w.table().markSaved(folder.resolve("x.json"));
          w.table().apply("the third", Case.blank("case-4"));
          w.table().goTo(1);
          return null;
        });
    assertThat(w.table().current().reference()).isEqualTo("case-2");
    assertThat(w.table().unsavedProperty().get()).isTrue();
    assertThat(w.table().undoNameProperty().get()).contains("the first");
    assertThat(w.table().redoNameProperty().get()).contains("the second");
    assertThat(w.table().savedStateProperty().get()).isEqualTo(2);
    OnStage.run(
        () -> {
          w.table().goTo(2);
          return null;
        });
    assertThat(w.table().unsavedProperty().get()).isFalse();
    OnStage.run(
        () -> {
          w.table().goTo(0);
          w.table().apply("another", Case.blank("case-5"));
          return null;
        });
    assertThat(w.table().editsProperty().get())
        .extracting(e -> e.name())
        .containsExactly("another");
    assertThat(w.table().savedStateProperty().get()).isEqualTo(-1);
  }
}
