package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.chart.SoftTissues;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;

/** The pictures of the soft tissues, and the depths that are dragged on the sheet. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SoftTissuesOnTheDeskTest {
  private OnStage w;
  private double downX;
  private double downY;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
  }

  @AfterAll
  void close() throws Exception {
    OnStage.run(
        () -> {
          w.table().tissueShownProperty().set(false);
          return null;
        });
    w.close();
  }

  @BeforeEach
  void lay() throws Exception {
    OnStage.run(
        () -> {
          w.table().tissueShownProperty().set(false);
          w.table().lay(Case.blank("case-1"), Optional.empty());
          w.table().select(Subject.of(Tooth.T41));
          w.table().tissueShownProperty().set(true);
          ((ButtonBase) scene().lookup("#tissue-lower")).fire();
          return null;
        });
    for (int i = 0; i < 300; i++) {
      if (OnStage.run(
          () ->
              scene().lookup("#knob-lingual-depth-41") instanceof Group g
                  && !g.getChildren().isEmpty())) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("no picture is shown");
  }

  private Scene scene() {
    return w.window.survey().tissue().orElseThrow().stage().getScene();
  }

  private SoftTissues soft(Arch arch) throws Exception {
    return OnStage.run(() -> w.table().current().chart(arch).softTissues());
  }

  private void mouse(Node n, EventType<MouseEvent> type, double dx, double dy) throws Exception {
    OnStage.run(
        () -> {
          if (type == MouseEvent.MOUSE_PRESSED) {
            Bounds b = n.localToScene(n.getBoundsInLocal());
            downX = b.getCenterX();
            downY = b.getCenterY();
          }
          double x = downX + dx;
          double y = downY + dy;
          Event.fireEvent(
              n,
              new MouseEvent(
                  type,
                  x,
                  y,
                  x,
                  y,
                  MouseButton.PRIMARY,
                  1,
                  false,
                  false,
                  false,
                  false,
                  true,
                  false,
                  false,
                  false,
                  false,
                  false,
                  null));
          return null;
        });
  }

  private void drag(Node n, double dx, double dy) throws Exception {
    mouse(n, MouseEvent.MOUSE_PRESSED, 0, 0);
    mouse(n, MouseEvent.MOUSE_DRAGGED, dx / 2, dy / 2);
    mouse(n, MouseEvent.MOUSE_DRAGGED, dx, dy);
    mouse(n, MouseEvent.MOUSE_RELEASED, dx, dy);
  }

  private Node knob(String id) throws Exception {
    return OnStage.run(() -> scene().lookup("#knob-" + id));
  }

  private void key(Node n, KeyCode code, boolean shift) throws Exception {
    OnStage.run(
        () -> {
          n.requestFocus();
          Event.fireEvent(
              n, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
          return null;
        });
  }

  @Test
  void the_line_under_a_tooth_is_dragged_to_its_depth_in_one_step() throws Exception {
    drag(knob("lingual-depth-31"), 0, 20);
    // From the published mean of 7.5 mm downwards.
    assertThat(soft(Arch.LOWER).lingualDepth().get(Tooth.T31)).isBetween(8.0, 12.0);
    assertThat(OnStage.run(() -> w.table().standingProperty().get())).isEqualTo(1);
    assertThat(OnStage.run(() -> w.table().undoNameProperty().get()).orElseThrow())
        .startsWith("31: lingual sulcus ");
  }

  @Test
  void arrow_keys_move_it_and_delete_takes_it_away() throws Exception {
    Node k = knob("buccal-depth-44");
    key(k, KeyCode.DOWN, false);
    double first = soft(Arch.LOWER).buccalDepth().get(Tooth.T44);
    key(k, KeyCode.DOWN, false);
    key(k, KeyCode.UP, true);
    assertThat(soft(Arch.LOWER).buccalDepth().get(Tooth.T44)).isEqualTo(first + 0.4);
    key(k, KeyCode.DELETE, false);
    assertThat(soft(Arch.LOWER).buccalDepth()).isEmpty();
  }

  @Test
  void the_section_says_what_the_depth_leaves_for_a_bar() throws Exception {
    Node k = knob("lingual-depth-41");
    key(k, KeyCode.ENTER, false);
    OnStage.run(
        () -> {
          TextField field = (TextField) scene().lookup("#tissue-number");
          assertThat(field.isFocused()).isTrue();
          field.setText("6.5");
          Event.fireEvent(field, new javafx.event.ActionEvent());
          return null;
        });
    assertThat(soft(Arch.LOWER).lingualDepth()).containsEntry(Tooth.T41, 6.5);
    // 6.5 mm less 3 mm clear of the margin and 1 mm above the floor.
    assertThat(
            OnStage.run(
                () ->
                    scene().lookup("#sulcus-section").lookupAll(".section-said").stream()
                        .map(n -> ((Label) n).getText())
                        .toList()))
        .singleElement()
        .asString()
        .contains("6.5 mm deep: leaves only 2.5 mm, too little for a bar of 4 mm.")
        .contains("sublingual bar (from 5 mm)");
    assertThat(OnStage.run(() -> scene().getFocusOwner())).isEqualTo(k);
  }

  @Test
  void a_frenum_is_charted_by_its_mark() throws Exception {
    key(knob("frenum-44"), KeyCode.SPACE, false);
    assertThat(soft(Arch.LOWER).frena()).containsExactly(Tooth.T44);
    key(knob("frenum-44"), KeyCode.SPACE, false);
    assertThat(soft(Arch.LOWER).frena()).isEmpty();
  }

  @Test
  void the_palate_is_chosen_by_its_section() throws Exception {
    OnStage.run(
        () -> {
          ((ButtonBase) scene().lookup("#tissue-upper")).fire();
          scene().getRoot().applyCss();
          ((ButtonBase) scene().lookup("#tissue-palate-HIGH")).fire();
          return null;
        });
    assertThat(soft(Arch.UPPER).palate()).contains(SoftTissues.PalateForm.HIGH);
  }

  @Test
  void a_depth_is_dragged_on_the_sheet_in_the_step_of_the_survey() throws Exception {
    OnStage.run(
        () -> {
          w.table().stepProperty().set(Step.SURVEY);
          w.table().select(Subject.of(Tooth.T31));
          return null;
        });
    w.settle();
    Node k = OnStage.run(() -> w.find("knob-sheet-lingual-depth", Node.class));
    assertThat(k).isNotNull();
    double scale = OnStage.run(() -> w.window.sheet().camera().scaleProperty().get());
    mouse(k, MouseEvent.MOUSE_PRESSED, 0, 0);
    // Lingual of a lower front tooth is up the sheet.
    mouse(k, MouseEvent.MOUSE_DRAGGED, 0, -3 * scale);
    assertThat(w.caption()).startsWith("31, lingual sulcus: ").endsWith(" mm");
    assertThat(soft(Arch.LOWER).lingualDepth()).isEmpty();
    mouse(k, MouseEvent.MOUSE_RELEASED, 0, -3 * scale);
    assertThat(soft(Arch.LOWER).lingualDepth().get(Tooth.T31)).isBetween(10.0, 14.0);
    OnStage.run(
        () -> {
          w.table().stepProperty().set(Step.REVIEW);
          return null;
        });
    assertThat(OnStage.run(() -> w.find("knob-sheet-lingual-depth", Node.class))).isNull();
  }
}
