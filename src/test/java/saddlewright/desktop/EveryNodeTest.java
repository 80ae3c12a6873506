package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;

/** Every node of every window has a name, a role, its turn at the keyboard, and a fair size. */
class EveryNodeTest {
  private OnStage w;
  private Stage main;

  @BeforeEach
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    main = OnStage.run(() -> (Stage) w.find("sheet", Node.class).getScene().getWindow());
  }

  @AfterEach
  void close() throws Exception {
    OnStage.run(
        () -> {
          others().forEach(Window::hide);
          return null;
        });
    w.close();
  }

  private List<Window> others() {
    return Window.getWindows().stream().filter(x -> x != main).toList();
  }

  private static Case demo(String name) throws Exception {
    return CaseStore.load(Path.of("demo-cases", name));
  }

  private void lay(String demo, Step step, Subject... selected) throws Exception {
    Case c = demo(demo);
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          w.table().stepProperty().set(step);
          w.table().preferences().listShownProperty().set(true);
          w.table().select(selected);
          return null;
        });
    w.settle();
    Thread.sleep(120);
  }

  private void select(Subject s) throws Exception {
    OnStage.run(
        () -> {
          w.table().select(s);
          return null;
        });
    w.settle();
  }

  /** Visits a scene, each sentence once, and says how much was seen of it. */
  private static List<String> visit(Callable<Scene> of, String where) throws Exception {
    NodeVisit v =
        OnStage.run(
            () -> {
              Scene scene = of.call();
              return new NodeVisit(scene, where).all().tabRound(parts(scene));
            });
    // A window that only tells something has nothing to be worked, but still takes the keyboard.
    assertThat(v.visited()).as(where).isGreaterThanOrEqualTo(where.startsWith("help.") ? 0 : 1);
    return v.faults();
  }

  /** What is read from top to bottom as one. */
  private static List<Node> parts(Scene scene) {
    List<Node> out = new ArrayList<>();
    for (String id :
        List.of("#order", "#tools", "#roll", "#subject", "#findings", "#status", "#welcome")) {
      Optional.ofNullable(scene.lookup(id)).ifPresent(out::add);
    }
    return out;
  }

  private void assertFaultless(List<String> faults) {
    assertThat(String.join("\n", new TreeSet<>(faults))).isEmpty();
  }

  @Test
  void of_the_welcome_page() throws Exception {
    assertFaultless(visit(main::getScene, "welcome"));
  }

  @Test
  void of_the_editor_in_each_step() throws Exception {
    List<String> faults = new ArrayList<>();
    for (Step step : Step.values()) {
      lay("10-fault-lower-class-2.json", step);
      faults.addAll(visit(main::getScene, step.toString()));
    }
    assertFaultless(faults);
  }

  @Test
  void of_the_editor_with_each_sort_of_subject() throws Exception {
    List<String> faults = new ArrayList<>();
    Case c = demo("10-fault-lower-class-2.json");
    List<Subject> subjects = new ArrayList<>();
    subjects.add(Subject.of(Tooth.T46));
    subjects.add(Subject.of(Tooth.T36));
    subjects.add(Subject.of(Arch.LOWER));
    c.lowerDesign().components().forEach(x -> subjects.add(Subject.of(Arch.LOWER, x)));
    lay("10-fault-lower-class-2.json", Step.REVIEW);
    for (Subject s : subjects) {
      select(s);
      faults.addAll(visit(main::getScene, s.key()));
    }
    assertFaultless(faults);
  }

  @Test
  void of_a_finding_that_is_open() throws Exception {
    lay("10-fault-lower-class-2.json", Step.REVIEW);
    OnStage.run(
        () -> {
          w.table().look(w.table().assessment().report().standing().get(0));
          return null;
        });
    w.settle();
    Thread.sleep(200);
    assertFaultless(visit(main::getScene, "finding"));
  }

  /** Windows by the menu item that opens them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "file.preview",
        "edit.history",
        "edit.preferences",
        "design.school-edit",
        "sheet.tooth-card",
        "sheet.soft-tissues",
        "sheet.quick-entry",
        "sheet.tooth-card",
        "sheet.soft-tissues",
        "help.step",
        "help.glossary",
        "help.cautions",
        "help.find",
        "help.shortcuts",
        "help.about"
      })
  void of_the_window_that_opens_by(String item) throws Exception {
    lay("10-fault-lower-class-2.json", Step.REVIEW, Subject.of(Tooth.T46));
    String name = Words.of(item).replace("_", "");
    Action action =
        OnStage.run(
            () ->
                Actions.of(w.window.menus()).stream()
                    .filter(a -> a.name().equals(name))
                    .findFirst()
                    .orElseThrow());
    javafx.application.Platform.runLater(action::run);
    Window opened = null;
    for (int i = 0; i < 300 && opened == null; i++) {
      Thread.sleep(20);
      opened = OnStage.run(() -> others().stream().findFirst().orElse(null));
    }
    assertThat(opened).as(name + " opens a window").isNotNull();
    Thread.sleep(600);
    Window seen = opened;
    assertFaultless(visit(seen::getScene, item));
  }
}
