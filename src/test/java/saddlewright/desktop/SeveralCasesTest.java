package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.DialogPane;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;

/** Several windows with a case each: opening, going round, closing, quitting, recent files. */
class SeveralCasesTest {
  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    w.settle();
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private static void onStage(Runnable r) throws Exception {
    OnStage.run(
        () -> {
          r.run();
          return null;
        });
  }

  private List<EditorWindow> desks() throws Exception {
    return OnStage.run(() -> List.copyOf(w.window.desks().all()));
  }

  private Path copyOf(String demo, String name) throws Exception {
    return Files.copy(Path.of("demo-cases", demo), folder.resolve(name));
  }

  private static String notice(EditorWindow desk) throws Exception {
    return OnStage.run(() -> desk.table().noticeProperty().get().orElse(""));
  }

  private void choose(String key) throws Exception {
    String name = Words.of(key).replace("_", "");
    onStage(
        () ->
            Actions.of(w.window.menus()).stream()
                .filter(a -> a.name().equals(name) && a.ready())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no ready action " + name))
                .run());
  }

  /** Answers the question that stands before the windows, by the kind of its answer. */
  private static void answer(ButtonBar.ButtonData kind) throws Exception {
    for (int i = 0; i < 200; i++) {
      boolean answered =
          OnStage.run(
              () -> {
                for (Window each : List.copyOf(Window.getWindows())) {
                  if (each.getScene().getRoot() instanceof DialogPane pane) {
                    ButtonType type =
                        pane.getButtonTypes().stream()
                            .filter(t -> t.getButtonData() == kind)
                            .findFirst()
                            .orElseThrow();
                    ((Button) pane.lookupButton(type)).fire();
                    return true;
                  }
                }
                return false;
              });
      if (answered) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("no question is asked");
  }

  @Test
  void a_file_opens_here_while_nothing_is_open_and_otherwise_in_a_window_of_its_own()
      throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    onStage(() -> w.window.files().open(one));
    assertThat(desks()).hasSize(1);
    onStage(() -> w.window.files().open(two));
    assertThat(desks()).hasSize(2);
    assertThat(w.table().fileProperty().get()).contains(one);
    EditorWindow second = desks().get(1);
    assertThat(second.table().fileProperty().get()).contains(two);

    onStage(() -> second.files().open(one));
    assertThat(desks()).as("it is open already").hasSize(2);
    assertThat(OnStage.run(() -> w.window.stage().isFocused())).isTrue();

    onStage(() -> w.window.files().open(folder.resolve("./x/../two.json")));
    assertThat(desks()).as("the same file by another name").hasSize(2);
  }

  @Test
  void an_untouched_new_case_gives_way_and_a_touched_one_does_not() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    w.press("welcome-new");
    onStage(() -> w.window.files().open(one));
    assertThat(desks()).hasSize(1);
    choose("file.new");
    assertThat(desks()).hasSize(2);
    EditorWindow second = desks().get(1);
    onStage(
        () -> {
          Case c = second.table().current();
          second.table().apply("x", c.withIdentity(c.reference(), "Mine", ""));
          second.files().open(copyUnchecked("04-upper-class-4.json", "two.json"));
        });
    assertThat(desks()).hasSize(3);
    assertThat(second.table().current().title()).isEqualTo("Mine");
  }

  private Path copyUnchecked(String demo, String name) {
    try {
      return copyOf(demo, name);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void several_files_open_together_and_what_cannot_be_opened_is_said() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path wrong = Files.writeString(folder.resolve("wrong.json"), "not json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    onStage(() -> w.window.files().openAll(List.of(one, wrong, folder, two)));
    assertThat(desks()).hasSize(2);
    EditorWindow front = desks().get(1);
    assertThat(front.table().fileProperty().get()).contains(two);
    assertThat(notice(front)).contains("wrong.json").contains(folder.getFileName().toString());
    assertThat(notice(front).lines()).hasSize(2);
  }

  @Test
  void a_prescription_opens_in_a_window_of_its_own_and_once_only() throws Exception {
    onStage(() -> w.window.files().open(copyUnchecked("01-lower-class-1-rpi.json", "one.json")));
    Path pdf = folder.resolve("one.pdf");
    onStage(() -> w.window.prescriptions().write(pdf));
    onStage(() -> w.window.files().openAll(List.of(pdf)));
    onStage(() -> w.window.files().openAll(List.of(pdf)));
    assertThat(desks()).hasSize(2);
    assertThat(desks().get(1).table().fileProperty().get()).isEmpty();
    assertThat(desks().get(1).table().current().lowerDesign())
        .isEqualTo(w.table().current().lowerDesign());
  }

  @Test
  void the_window_menu_lists_the_cases_and_leads_from_one_to_the_next() throws Exception {
    Files.createDirectory(folder.resolve("a"));
    Files.createDirectory(folder.resolve("b"));
    Path one = copyOf("01-lower-class-1-rpi.json", "a/case.json");
    Path two = copyOf("04-upper-class-4.json", "b/case.json");
    onStage(() -> w.window.files().openAll(List.of(one, two)));
    choose("window.new");
    EditorWindow second = desks().get(1);
    onStage(
        () ->
            second
                .table()
                .apply("x", second.table().current().withIdentity("SW-2222-2222", "T", "")));
    List<String> names =
        OnStage.run(
            () -> {
              Menu menu =
                  w.window.menus().getMenus().stream()
                      .filter(m -> m.getText().equals(Words.of("menu.window")))
                      .findFirst()
                      .orElseThrow();
              Event.fireEvent(menu, new Event(Menu.ON_SHOWING));
              return menu.getItems().stream()
                  .filter(RadioMenuItem.class::isInstance)
                  .map(MenuItem::getText)
                  .toList();
            });
    assertThat(names)
        .containsExactly(
            "case.json – " + folder.resolve("a"),
            "case.json – " + folder.resolve("b") + " * (not saved)",
            "Welcome page");
    onStage(() -> w.window.desks().step(w.window, true));
    assertThat(OnStage.run(() -> second.stage().isFocused())).isTrue();
    onStage(() -> w.window.desks().step(w.window, false));
    assertThat(OnStage.run(() -> w.window.desks().all().get(2).stage().isFocused())).isTrue();
  }

  @Test
  void what_is_preferred_in_one_window_holds_in_all() throws Exception {
    choose("window.new");
    EditorWindow second = desks().get(1);
    onStage(() -> w.table().darkDeskProperty().set(true));
    assertThat(second.table().darkDeskProperty().get()).isTrue();
    onStage(() -> second.files().open(copyUnchecked("04-upper-class-4.json", "two.json")));
    assertThat(OnStage.run(() -> Actions.of(w.window.menus())))
        .extracting(Action::name)
        .anyMatch(n -> n.startsWith("two.json  –"));
  }

  @Test
  void closing_a_window_leaves_the_others_and_the_last_shows_the_welcome_page() throws Exception {
    onStage(() -> w.window.files().open(copyUnchecked("01-lower-class-1-rpi.json", "one.json")));
    choose("window.new");
    EditorWindow second = desks().get(1);
    onStage(() -> second.files().close());
    assertThat(desks()).containsExactly(w.window);
    onStage(() -> w.window.files().close());
    assertThat(desks()).containsExactly(w.window);
    assertThat(w.table().openProperty().get()).isFalse();
  }

  @Test
  void quitting_asks_for_each_case_that_is_not_saved_and_can_be_cancelled() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    Path three = copyOf("07-upper-class-3-drifted.json", "three.json");
    onStage(() -> w.window.files().openAll(List.of(one, two, three)));
    for (EditorWindow d : List.of(desks().get(0), desks().get(2))) {
      onStage(
          () -> {
            Case c = d.table().current();
            d.table().apply("x", c.withIdentity(c.reference(), "Changed", c.story()));
          });
    }
    javafx.application.Platform.runLater(() -> w.window.desks().quit());
    answer(ButtonBar.ButtonData.YES);
    answer(ButtonBar.ButtonData.CANCEL_CLOSE);
    assertThat(desks()).as("cancelled: all stay").hasSize(3);
    assertThat(Files.readString(one)).as("the first was saved").contains("Changed");
    assertThat(Files.readString(three)).doesNotContain("Changed");

    javafx.application.Platform.runLater(() -> w.window.desks().quit());
    answer(ButtonBar.ButtonData.NO);
    assertThat(desks()).isEmpty();
    assertThat(Files.readString(three)).as("discarded").doesNotContain("Changed");
  }

  @Test
  void a_case_is_not_saved_over_one_that_is_open_elsewhere() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    byte[] before = Files.readAllBytes(one);
    onStage(() -> w.window.files().openAll(List.of(one, two)));
    FileQuestion.answerBy(
        java.util.Optional.of(
            new FileQuestion.Answering() {
              @Override
              public java.util.Optional<Path> toOpen(javafx.stage.FileChooser question) {
                return java.util.Optional.empty();
              }

              @Override
              public java.util.Optional<Path> toSave(javafx.stage.FileChooser question) {
                return java.util.Optional.of(one);
              }
            }));
    try {
      EditorWindow second = desks().get(1);
      assertThat(OnStage.run(() -> second.files().saveAs())).isFalse();
      assertThat(notice(second)).contains("one.json is open in another window");
      assertThat(Files.readAllBytes(one)).isEqualTo(before);
    } finally {
      FileQuestion.answerBy(java.util.Optional.empty());
    }
  }

  @Test
  void a_file_that_is_gone_is_said_kindly_and_can_be_taken_off_the_list() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    onStage(() -> w.window.files().open(one));
    onStage(() -> w.window.files().close());
    Files.delete(one);
    onStage(() -> w.window.files().open(one));
    w.settle();
    assertThat(notice(w.window)).startsWith("one.json is not in " + folder + " any more.");
    onStage(() -> ((Button) w.find("notice", Node.class).lookup(".offer")).fire());
    assertThat(Files.readString(folder.resolve("settings/recent.txt"))).doesNotContain("one.json");
    assertThat(w.find("notice", Node.class).isVisible()).isFalse();
  }

  @Test
  void a_private_list_notes_and_shows_nothing_and_can_be_cleared() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    Path list = folder.resolve("settings/recent.txt");
    onStage(() -> w.window.files().open(one));
    choose("recent.keep-private");
    assertThat(notice(w.window)).contains("(1)");
    onStage(() -> w.window.files().open(two));
    assertThat(Files.readString(list)).contains("one.json").doesNotContain("two.json");
    assertThat(OnStage.run(() -> Actions.of(w.window.menus())))
        .extracting(Action::name)
        .noneMatch(n -> n.startsWith("one.json  –"));
    choose("recent.keep-private");
    assertThat(OnStage.run(() -> Actions.of(w.window.menus())))
        .extracting(Action::name)
        .anyMatch(n -> n.startsWith("one.json  –"));
    choose("file.forget");
    assertThat(Files.readString(list)).isEmpty();
  }

  @Test
  void on_the_page_of_recent_files_the_delete_key_takes_one_off_and_enter_opens() throws Exception {
    Path one = copyOf("01-lower-class-1-rpi.json", "one.json");
    Path two = copyOf("04-upper-class-4.json", "two.json");
    onStage(() -> w.window.files().openAll(List.of(one, two)));
    onStage(() -> w.window.showRecent());
    ListView<?> list = (ListView<?>) lookup("recent-list");
    assertThat(OnStage.run(() -> list.getItems().toString())).contains("two.json", "one.json");
    onStage(() -> list.getSelectionModel().selectFirst());
    key(list, KeyCode.DELETE);
    assertThat(OnStage.run(() -> list.getItems().toString())).doesNotContain("two.json");
    onStage(() -> w.window.desks().all().get(1).stage().hide());
    key(list, KeyCode.ENTER);
    assertThat(OnStage.run(() -> w.window.stage().isFocused())).isTrue();
  }

  private static void key(Node node, KeyCode code) throws Exception {
    onStage(
        () ->
            Event.fireEvent(
                node,
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
  }

  private static Node lookup(String id) throws Exception {
    return OnStage.run(
        () ->
            Window.getWindows().stream()
                .map(x -> x.getScene().lookup("#" + id))
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id)));
  }

  @Test
  void what_would_become_of_files_that_are_dragged_is_said_over_the_window() throws Exception {
    var sign = w.find("drop-sign", saddlewright.desktop.desks.FileDrop.class);
    List<Callable<List<Path>>> dragged =
        List.of(
            () -> List.of(Path.of("a.json")),
            () -> List.of(Path.of("a.json"), Path.of("b.PDF")),
            () -> List.of(Path.of("a.json"), Path.of("b.txt")),
            () -> List.of(Path.of("b.txt")));
    List<String> said = new java.util.ArrayList<>();
    for (Callable<List<Path>> files : dragged) {
      boolean accepted = OnStage.run(() -> sign.show(files.call()));
      said.add(
          accepted + ": " + OnStage.run(() -> ((Labeled) sign.lookup(".drop-words")).getText()));
    }
    assertThat(said)
        .containsExactly(
            "true: Drop to open a.json",
            "true: Drop to open 2 files, each in a window of its own",
            "true: Drop to open 1 of these 2 files; the others are neither cases nor prescriptions",
            "false: Only cases (.saddle, .json) and prescriptions (.pdf) can be opened here");
    assertThat(sign.isMouseTransparent()).isTrue();
  }
}
