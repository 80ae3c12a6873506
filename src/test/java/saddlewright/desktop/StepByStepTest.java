package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;
import saddlewright.geometry.Point;
import saddlewright.prescription.growth.GrowthStage;

/** The design is shown as it grows, in the window and alone on the screen, and is not changed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StepByStepTest {
  private OnStage w;
  private Case whole;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    whole = CaseStore.load(Path.of("demo-cases", "01-lower-class-1-rpi.json"));
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  @BeforeEach
  void lay() throws Exception {
    OnStage.run(
        () -> {
          w.table().lay(whole, Optional.empty());
          w.table().stepProperty().set(Step.SUPPORT);
          return null;
        });
    w.settle();
  }

  private void act(String key) throws Exception {
    String name = Words.of(key).replace("_", "");
    OnStage.run(
        () -> {
          Actions.of(w.window.menus()).stream()
              .filter(a -> a.name().equals(name))
              .findFirst()
              .ifPresent(Action::run);
          return null;
        });
    w.settle();
  }

  private Optional<GrowthStage> stage() {
    return w.table().stageProperty().get();
  }

  @Test
  void keys_and_slider_go_through_the_stages_and_captions_follow() throws Exception {
    assertThat(OnStage.run(() -> w.find("step-strip", Node.class).isVisible())).isFalse();
    act("view.step-on");
    assertThat(stage()).contains(GrowthStage.CHART);
    act("view.step-on");
    act("view.step-on");
    assertThat(stage()).contains(GrowthStage.SUPPORT);
    assertThat(w.texts("step-strip")).anyMatch(t -> t.equals("Step 3 of 8: Support"));
    assertThat(w.texts("steps-caption")).anyMatch(t -> t.contains("rest"));
    act("view.step-back");
    assertThat(stage()).contains(GrowthStage.SADDLES);
    OnStage.run(
        () -> {
          w.find("steps-slider", Slider.class).setValue(5);
          return null;
        });
    assertThat(stage()).contains(GrowthStage.CONNECTORS);
    w.press("steps-leave");
    assertThat(stage()).isEmpty();
  }

  @Test
  void a_click_on_a_stage_changes_nothing_and_the_page_does_not_move() throws Exception {
    act("view.step-on");
    Point before = OnStage.run(() -> place(36));
    act("view.step-on");
    assertThat(OnStage.run(() -> place(36))).isEqualTo(before);
    w.click(45, 0.8, 0);
    w.hover(34, 0.8, 0);
    w.click(34, -0.8, 0);
    assertThat(w.table().current()).isEqualTo(whole);
    assertThat(stage()).contains(GrowthStage.SADDLES);
  }

  private Point place(int fdi) {
    var tooth = saddlewright.dentition.Tooth.of(fdi);
    return w.window
        .sheet()
        .toPane(
            tooth.arch(), w.table().assessment().arch(tooth.arch()).form().tooth(tooth).at(0, 0))
        .orElseThrow();
  }

  @Test
  void an_edit_shows_the_whole_design_again_and_undo_leaves_the_stage() throws Exception {
    act("view.step-on");
    OnStage.run(
        () -> {
          w.table().apply("clear", whole.with(saddlewright.design.ArchDesign.empty(Arch.LOWER)));
          return null;
        });
    assertThat(stage()).isEmpty();
    act("view.step-on");
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(stage()).contains(GrowthStage.CHART);
    assertThat(w.table().current()).isEqualTo(whole);
  }

  @Test
  void a_picture_of_each_stage_is_written(@TempDir Path folder) throws Exception {
    OnStage.run(
        () -> {
          w.window.files().writeSteps(folder.resolve("case.svg"));
          return null;
        });
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.map(p -> p.getFileName().toString()).sorted())
          .hasSize(8)
          .startsWith("case-1-chart.svg", "case-2-saddles.svg")
          .endsWith("case-8-complete.svg");
    }
    long[] sizes = new long[8];
    for (GrowthStage s : GrowthStage.values()) {
      String name = s.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      sizes[s.ordinal()] =
          Files.size(folder.resolve("case-" + (s.ordinal() + 1) + "-" + name + ".svg"));
    }
    assertThat(sizes[2]).isGreaterThan(sizes[0]);
    assertThat(sizes[5]).isGreaterThan(sizes[2]);
  }

  @Test
  void alone_on_the_screen_keys_step_and_escape_leaves() throws Exception {
    double zoom = zoom();
    act("view.sheet-only");
    Scene scene = OnStage.run(() -> w.window.alone().orElseThrow().scene());
    assertThat(OnStage.run(() -> w.window.alone().orElseThrow().isShowing())).isTrue();
    key(scene, KeyCode.RIGHT);
    key(scene, KeyCode.RIGHT);
    assertThat(stage()).contains(GrowthStage.SADDLES);
    assertThat(OnStage.run(() -> ((Label) scene.lookup(".projected-title")).getText()))
        .isEqualTo("Step 2 of 8: Saddles");
    key(scene, KeyCode.LEFT);
    assertThat(stage()).contains(GrowthStage.CHART);
    key(scene, KeyCode.END);
    assertThat(stage()).contains(GrowthStage.COMPLETE);
    key(scene, KeyCode.PLUS);
    key(scene, KeyCode.ESCAPE);
    assertThat(OnStage.run(() -> w.window.alone().orElseThrow().isShowing())).isFalse();
    act("view.step-by-step");
    assertThat(stage()).isEmpty();
    // The window has the room of the strip again once it has been laid out.
    for (int i = 0; i < 200 && zoom() != zoom; i++) {
      Thread.sleep(10);
    }
    assertThat(zoom()).isEqualTo(zoom);
  }

  private double zoom() throws Exception {
    return OnStage.run(() -> w.window.sheet().camera().scaleProperty().get());
  }

  private static void key(Scene scene, KeyCode code) throws Exception {
    OnStage.run(
        () -> {
          Event.fireEvent(
              scene.getRoot(),
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
          return null;
        });
  }
}
