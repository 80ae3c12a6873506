package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.desktop.templates.Templates;

/** A case begins from a template, by pointer and by keyboard, and is kept as one. */
class TemplatePageTest {
  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder);
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

  private static Parent page() {
    return Window.getWindows().stream()
        .map(x -> x.getScene().lookup("#templates"))
        .filter(java.util.Objects::nonNull)
        .map(Parent.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static List<Button> cards() {
    return page().lookupAll(".template-begin").stream().map(Button.class::cast).toList();
  }

  private static boolean isFocused(int card) {
    return page().getScene().getFocusOwner() == cards().get(card);
  }

  private static void press(String id) throws Exception {
    onStage(() -> ((ButtonBase) page().lookup("#" + id)).fire());
  }

  private static void key(Node node, KeyCode code) {
    Event.fireEvent(
        node, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
  }

  @Test
  void the_lower_class_one_design_is_there_after_few_clicks() throws Exception {
    Case demo = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    onStage(() -> w.window.showTemplates(false));
    press("templates-lower");
    press("templates-class-I");
    press("templates-surveyed");
    assertThat(OnStage.run(() -> cards().size())).isEqualTo(3);
    onStage(() -> cards().get(0).fire());
    w.settle();
    Case now = w.table().current();
    assertThat(now.lowerDesign()).isEqualTo(demo.lowerDesign());
    assertThat(now.lowerChart()).isEqualTo(demo.lowerChart());
    assertThat(now.reference()).startsWith("SW-").isNotEqualTo("SW-TEMPLATE");
    assertThat(now.title()).isEmpty();
    assertThat(w.table().fileProperty().get()).isEmpty();
    assertThat(w.find("notice-text", Labeled.class).getText()).contains("that of no patient");
  }

  @Test
  void the_arrow_keys_go_over_the_templates_as_they_lie() throws Exception {
    onStage(() -> w.window.showTemplates(false));
    for (int i = 0; i < 300 && OnStage.run(() -> cards().get(4).getLayoutBounds().isEmpty()); i++) {
      Thread.sleep(10);
    }
    onStage(
        () -> {
          page().getScene().getRoot().applyCss();
          page().getScene().getRoot().layout();
        });
    assertThat(OnStage.run(() -> isFocused(0))).isTrue();
    onStage(() -> key(cards().get(0), KeyCode.RIGHT));
    assertThat(OnStage.run(() -> isFocused(1))).isTrue();
    onStage(() -> key(cards().get(1), KeyCode.DOWN));
    int below =
        OnStage.run(
            () -> {
              int n = 0;
              while (!isFocused(n)) {
                n++;
              }
              return n;
            });
    assertThat(below).isGreaterThan(2);
    double x1 = OnStage.run(() -> cards().get(1).localToScene(0, 0).getX());
    double x2 = OnStage.run(() -> cards().get(below).localToScene(0, 0).getX());
    assertThat(x2).isEqualTo(x1);
    onStage(() -> key(cards().get(below), KeyCode.HOME));
    assertThat(OnStage.run(() -> isFocused(0))).isTrue();
    assertThat(OnStage.run(() -> cards().get(0).getAccessibleText()))
        .startsWith("Lower Class I: RPI sets and lingual bar. lower Kennedy Class I.");
  }

  @Test
  void the_case_on_the_desk_is_kept_renamed_removed_and_put_back() throws Exception {
    onStage(() -> w.window.files().open(Path.of("demo-cases/04-upper-class-4.json")));
    onStage(() -> w.window.showTemplates(true));
    onStage(() -> ((TextField) page().lookup("#template-save-name")).setText("My four incisors"));
    press("template-save");
    Templates templates = new Templates(folder);
    assertThat(templates.all().templates().get(0).name()).isEqualTo("My four incisors");
    onStage(
        () -> {
          key(cards().get(0), KeyCode.F2);
          TextField field = (TextField) page().lookup("#template-name");
          field.setText("Mine");
          field.getOnAction().handle(null);
        });
    assertThat(templates.all().templates().get(0).name()).isEqualTo("Mine");
    onStage(() -> key(cards().get(0), KeyCode.DELETE));
    assertThat(templates.all().templates().get(0).isOwn()).isFalse();
    press("templates-put-back");
    assertThat(templates.all().templates().get(0).name()).isEqualTo("Mine");
    onStage(() -> cards().get(0).fire());
    assertThat(w.window.desks().all()).hasSize(2);
    assertThat(w.window.desks().all().get(1).table().current().upperDesign())
        .isEqualTo(w.table().current().upperDesign());
  }

  @Test
  void a_case_begins_like_the_one_on_the_desk() throws Exception {
    onStage(() -> w.window.files().open(Path.of("demo-cases/03-both-arches.json")));
    onStage(() -> w.window.files().beginLikeThis());
    assertThat(w.window.desks().all()).hasSize(2);
    Case now = w.window.desks().all().get(1).table().current();
    assertThat(now.lowerDesign()).isEqualTo(w.table().current().lowerDesign());
    assertThat(now.prescription().signature()).isEmpty();
    assertThat(now.reference()).isNotEqualTo(w.table().current().reference());
  }
}
