package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextArea;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.Note;
import saddlewright.desktop.actions.Actions;
import saddlewright.geometry.Point;

/**
 * How often the pointer is pressed to draw the lower Class I demo from nothing, by somebody who
 * knows that Alt does both sides: each press of a button, click on the sheet and drag counts one.
 */
class FewActionsTest {
  private static final ComponentId ANY = ComponentId.of("x-1");
  private static final int AIM = 30;
  private static final int AIM_FROM_TEMPLATE = 12;
  private static final String NOTE = "Altered cast impression for the free ends";

  private int actions;

  @Test
  void the_lower_class_one_demo_is_drawn_from_nothing(@TempDir Path settings) throws Exception {
    Case demo = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    try (OnStage w = OnStage.open(settings)) {
      press(w, "welcome-new");
      press(w, "show-LOWER");
      bothSides(w, () -> w.drag(36, 37));
      press(w, "tool-chart-not-replaced");
      bothSides(w, () -> w.click(38, 0, 0));

      press(w, "step-SURVEY");
      bothSides(w, () -> w.click(35, 0, 1.1));
      press(w, "step-SADDLES");
      bothSides(w, () -> w.click(37, 0, 0));
      press(w, "step-RETENTION");
      bothSides(w, () -> w.click(35, 0, 1.1));
      press(w, "step-INDIRECT_RETENTION");
      bothSides(w, () -> w.click(33, 0, -0.5));

      press(w, "step-CONNECTORS");
      press(w, "tool-connector-LINGUAL_BAR");
      counted(() -> w.clickMidline(Arch.LOWER, 25));
      counted(() -> w.pullTo("right-end", 45));
      counted(() -> w.pullTo("left-end", 35));
      press(w, "tool-relief-UNDER_LOWER_CONNECTOR");
      counted(() -> w.clickMidline(Arch.LOWER, 25));

      press(w, "step-REVIEW");
      press(w, "tool-note");
      counted(() -> w.clickAt(Arch.LOWER, new Point(0, 55)));
      type(w, NOTE);

      System.out.println("The lower Class I demo from nothing: " + actions + " pointer actions.");
      assertThat(bare(w.table().current())).containsExactlyInAnyOrderElementsOf(bare(demo));
      for (Tooth t : Tooth.in(Arch.LOWER)) {
        assertThat(w.table().current().lowerChart().tooth(t).status())
            .as(t.toString())
            .isEqualTo(demo.lowerChart().tooth(t).status());
        assertThat(w.table().current().lowerChart().tooth(t).gap())
            .as(t.toString())
            .isEqualTo(demo.lowerChart().tooth(t).gap());
      }
      assertThat(actions).isLessThanOrEqualTo(AIM);
    }
  }

  @Test
  void it_is_begun_from_a_template(@TempDir Path settings) throws Exception {
    Case demo = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    try (OnStage w = OnStage.open(settings)) {
      w.settle();
      counted(() -> {}); // The menu is opened.
      counted(() -> chooseInMenu(w, "file.new-from-template"));
      pressInPage("templates-lower");
      pressInPage("templates-class-I");
      counted(
          () ->
              OnStage.run(
                  () -> {
                    page().lookupAll(".template-begin").stream()
                        .map(Button.class::cast)
                        .filter(b -> b.getAccessibleText().contains("RPI sets and lingual bar"))
                        .findFirst()
                        .orElseThrow()
                        .fire();
                    return null;
                  }));
      w.settle();
      System.out.println(
          "The lower Class I demo from a template: " + actions + " pointer actions.");
      assertThat(bare(w.table().current())).containsExactlyInAnyOrderElementsOf(bare(demo));
      assertThat(actions).isLessThanOrEqualTo(AIM_FROM_TEMPLATE);
    }
  }

  private static void chooseInMenu(OnStage w, String key) throws Exception {
    String name = Words.of(key).replace("_", "");
    OnStage.run(
        () -> {
          Actions.of(w.window.menus()).stream()
              .filter(a -> a.name().equals(name))
              .findFirst()
              .orElseThrow()
              .run();
          return null;
        });
    w.settle();
  }

  private static Node page() {
    return Window.getWindows().stream()
        .filter(x -> x.isShowing() && x.getScene() != null)
        .map(x -> x.getScene().lookup("#templates"))
        .filter(Objects::nonNull)
        .findFirst()
        .orElseThrow();
  }

  private void pressInPage(String id) throws Exception {
    counted(
        () ->
            OnStage.run(
                () -> {
                  ((ButtonBase) page().lookup("#" + id)).fire();
                  return null;
                }));
  }

  /** The components without their ids; where the words of a note lie is a matter of taste. */
  private static List<Component> bare(Case c) {
    return c.lowerDesign().components().stream()
        .map(x -> x instanceof Note n ? inPlace(n) : x)
        .map(x -> x.withId(ANY))
        .toList();
  }

  private static Component inPlace(Note n) {
    return new Note(
        n.id(), n.text(), 0, 0, n.pointsAtX().map(x -> 0.0), n.pointsAtY().map(y -> 0.0));
  }

  private interface Deed {
    void run() throws Exception;
  }

  private void counted(Deed deed) throws Exception {
    deed.run();
    actions++;
  }

  private void press(OnStage w, String id) throws Exception {
    counted(() -> w.press(id));
  }

  private void bothSides(OnStage w, Deed deed) throws Exception {
    Callable<Void> held =
        () -> {
          deed.run();
          return null;
        };
    counted(() -> w.with(OnStage.Held.ALT, held));
  }

  /** The field of a new note has the focus already, with its words selected; Escape leaves it. */
  private static void type(OnStage w, String words) throws Exception {
    OnStage.run(
        () -> {
          TextArea field = w.find("note-text", TextArea.class);
          assertThat(field.isFocused()).as("the words can be typed without a click").isTrue();
          field.replaceSelection(words);
          return null;
        });
    new ByKeys(w).press("Esc");
  }
}
