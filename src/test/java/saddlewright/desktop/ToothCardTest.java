package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Subject;

/** The tooth card, worked by pointer and by keyboard. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ToothCardTest {
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
          w.table().cardShownProperty().set(false);
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
          w.table().cardShownProperty().set(true);
          return null;
        });
    waitForPicture();
  }

  private void waitForPicture() throws Exception {
    for (int i = 0; i < 300; i++) {
      if (OnStage.run(
          () ->
              scene().lookup("#knob-undercut-mesiobuccal") instanceof Group g
                  && !g.getChildren().isEmpty())) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("the card shows no picture");
  }

  private Scene scene() {
    return w.window.survey().card().orElseThrow().stage().getScene();
  }

  private Node knob(String id) {
    Node n = scene().lookup("#knob-" + id);
    if (n == null) {
      throw new AssertionError("no knob " + id);
    }
    return n;
  }

  private ToothFindings of(Tooth t) throws Exception {
    return OnStage.run(() -> w.table().current().chart(t.arch()).tooth(t));
  }

  private int standing() throws Exception {
    return OnStage.run(() -> w.table().standingProperty().get());
  }

  private Optional<String> undo() throws Exception {
    return OnStage.run(() -> w.table().undoNameProperty().get());
  }

  private void mouse(Node n, EventType<MouseEvent> type, double dx, double dy) throws Exception {
    OnStage.run(
        () -> {
          Bounds b = n.localToScene(n.getBoundsInLocal());
          double x = downX(n, type, b) + dx;
          double y = downY(n, type, b) + dy;
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

  private double downX;
  private double downY;

  private double downX(Node n, EventType<MouseEvent> type, Bounds b) {
    if (type == MouseEvent.MOUSE_PRESSED) {
      downX = b.getCenterX();
      downY = b.getCenterY();
    }
    return downX;
  }

  private double downY(Node n, EventType<MouseEvent> type, Bounds b) {
    return downY;
  }

  private void click(String id) throws Exception {
    mouse(knob(id), MouseEvent.MOUSE_PRESSED, 0, 0);
    mouse(knob(id), MouseEvent.MOUSE_RELEASED, 0, 0);
  }

  private void drag(String id, double dx, double dy) throws Exception {
    mouse(knob(id), MouseEvent.MOUSE_PRESSED, 0, 0);
    mouse(knob(id), MouseEvent.MOUSE_DRAGGED, dx / 2, dy / 2);
    mouse(knob(id), MouseEvent.MOUSE_DRAGGED, dx, dy);
    mouse(knob(id), MouseEvent.MOUSE_RELEASED, dx, dy);
  }

  private void key(Node n, KeyCode code, boolean shift) throws Exception {
    OnStage.run(
        () -> {
          Event.fireEvent(
              n, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
          return null;
        });
  }

  private void key(String id, KeyCode code) throws Exception {
    OnStage.run(
        () -> {
          knob(id).requestFocus();
          return null;
        });
    key(knob(id), code, false);
  }

  @Test
  void clicks_on_a_zone_go_through_the_gauges_each_a_step_with_a_name() throws Exception {
    click("undercut-mesiobuccal");
    assertThat(of(Tooth.T46).undercuts()).containsEntry(Zone.MESIOBUCCAL, Undercut.of(0.25));
    assertThat(undo()).contains("46: mesiobuccal undercut 0.25 mm");
    click("undercut-mesiobuccal");
    click("undercut-mesiobuccal");
    click("undercut-mesiobuccal");
    assertThat(of(Tooth.T46).undercuts()).containsEntry(Zone.MESIOBUCCAL, Undercut.of(0));
    assertThat(standing()).isEqualTo(4);
  }

  @Test
  void the_picture_says_in_words_what_is_charted() throws Exception {
    click("undercut-distolingual");
    assertThat(OnStage.run(() -> knob("undercut-distolingual").getAccessibleText()))
        .isEqualTo("Distolingual undercut: 0.25 mm");
    List<String> words =
        OnStage.run(
            () ->
                scene().lookup("#picture-plan").lookupAll(".label").stream()
                    .map(n -> ((Label) n).getText())
                    .toList());
    assertThat(words).contains("0.25", "distolingual", "mesiobuccal", "Mesial", "Buccal");
  }

  @Test
  void dragging_a_zone_outwards_is_one_step() throws Exception {
    click("undercut-mid-buccal");
    int before = standing();
    // A lower tooth has its cheek at the foot of the picture.
    drag("undercut-mid-buccal", 0, 40);
    double depth = of(Tooth.T46).undercuts().get(Zone.MID_BUCCAL).depth();
    assertThat(depth).isBetween(0.4, 0.9);
    assertThat(standing()).isEqualTo(before + 1);
  }

  @Test
  void escape_gives_up_a_drag() throws Exception {
    click("undercut-mid-buccal");
    Node k = OnStage.run(() -> knob("undercut-mid-buccal"));
    mouse(k, MouseEvent.MOUSE_PRESSED, 0, 0);
    mouse(k, MouseEvent.MOUSE_DRAGGED, 0, 40);
    key(k, KeyCode.ESCAPE, false);
    mouse(k, MouseEvent.MOUSE_RELEASED, 0, 40);
    assertThat(of(Tooth.T46).undercuts()).containsEntry(Zone.MID_BUCCAL, Undercut.of(0.25));
    assertThat(standing()).isEqualTo(1);
    assertThat(OnStage.run(() -> k.getAccessibleText())).endsWith("0.25 mm");
  }

  @Test
  void how_low_an_undercut_lies_is_dragged_along_the_crown() throws Exception {
    click("undercut-mesiobuccal");
    drag("height-mesiobuccal", 0, -20);
    double height = of(Tooth.T46).undercuts().get(Zone.MESIOBUCCAL).height().orElseThrow();
    // From the middle of the gingival third, 7.5 mm / 6, upwards.
    assertThat(height).isBetween(1.7, 3.5);
    key("height-mesiobuccal", KeyCode.DELETE);
    assertThat(of(Tooth.T46).undercuts()).containsEntry(Zone.MESIOBUCCAL, Undercut.of(0.25));
  }

  @Test
  void turning_the_elevation_tilts_and_turning_the_plan_rotates() throws Exception {
    // Mesial is at the right of the buccal side of a right tooth.
    drag("tilt-along", 60, 0);
    assertThat(of(Tooth.T46).tilt()).contains(Tilt.MESIAL);
    assertThat(of(Tooth.T46).tiltDegrees().orElseThrow()).isBetween(8.0, 25.0);
    key("tilt-across", KeyCode.LEFT);
    assertThat(of(Tooth.T46).tilt()).contains(Tilt.LINGUAL);
    assertThat(of(Tooth.T46).tiltDegrees()).contains(5.0);
    key("tilt-across", KeyCode.DELETE);
    assertThat(of(Tooth.T46).tilt()).isEmpty();
    drag("tooth-rotation", 0, -40);
    assertThat(of(Tooth.T46).rotationDegrees().orElseThrow()).isBetween(5.0, 25.0);
  }

  @Test
  void the_crown_grows_by_its_edge_and_by_its_margin() throws Exception {
    drag("crown-edge", 0, -15);
    double tall = of(Tooth.T46).crownHeight().orElseThrow();
    assertThat(tall).isGreaterThan(7.9);
    drag("crown-margin", 0, 15);
    assertThat(of(Tooth.T46).crownHeight().orElseThrow()).isGreaterThan(tall + 0.3);
    assertThat(standing()).isEqualTo(2);
  }

  @Test
  void the_mark_of_a_rest_site_takes_its_room() throws Exception {
    click("room-mesial-occlusal");
    assertThat(of(Tooth.T46).clearances()).containsEntry(RestSite.MESIAL_OCCLUSAL, 1.0);
    key("room-mesial-occlusal", KeyCode.UP);
    key("room-mesial-occlusal", KeyCode.UP);
    assertThat(of(Tooth.T46).clearances()).containsEntry(RestSite.MESIAL_OCCLUSAL, 2.0);
    // Steps that follow each other are taken back together.
    assertThat(standing()).isEqualTo(2);
  }

  @Test
  void the_wheel_turns_the_knob_that_has_the_focus() throws Exception {
    click("undercut-mesiobuccal");
    OnStage.run(
        () -> {
          Node n = knob("undercut-mesiobuccal");
          Event.fireEvent(
              n,
              new ScrollEvent(
                  ScrollEvent.SCROLL,
                  0,
                  0,
                  0,
                  0,
                  false,
                  false,
                  false,
                  false,
                  false,
                  false,
                  0,
                  40,
                  0,
                  40,
                  ScrollEvent.HorizontalTextScrollUnits.NONE,
                  0,
                  ScrollEvent.VerticalTextScrollUnits.NONE,
                  0,
                  0,
                  null));
          return null;
        });
    assertThat(of(Tooth.T46).undercuts().get(Zone.MESIOBUCCAL).depth()).isNotEqualTo(0.25);
  }

  @Test
  void enter_writes_the_number_and_the_focus_comes_back() throws Exception {
    key("undercut-mesiobuccal", KeyCode.ENTER);
    Node field = OnStage.run(() -> scene().getFocusOwner());
    assertThat(field.getId()).isEqualTo("card-undercut-MESIOBUCCAL");
    OnStage.run(
        () -> {
          ((TextField) field).setText("35");
          Event.fireEvent(field, new javafx.event.ActionEvent());
          return null;
        });
    assertThat(of(Tooth.T46).undercuts()).containsEntry(Zone.MESIOBUCCAL, Undercut.of(0.35));
    assertThat(OnStage.run(() -> scene().getFocusOwner().getId()))
        .isEqualTo("knob-undercut-mesiobuccal");
  }

  @Test
  void what_cannot_be_used_is_said_beside_the_number() throws Exception {
    OnStage.run(
        () -> {
          TextField field = (TextField) scene().lookup("#card-tooth-width");
          field.requestFocus();
          field.setText("1.14");
          Event.fireEvent(field, new javafx.event.ActionEvent());
          return null;
        });
    List<String> said =
        OnStage.run(
            () ->
                scene().getRoot().lookupAll(".field-error").stream()
                    .map(n -> ((Label) n).getText())
                    .filter(t -> !t.isEmpty())
                    .toList());
    assertThat(said).singleElement().asString().contains("1.14 cm would be 11.4 mm");
    assertThat(of(Tooth.T46).mesiodistal()).isEmpty();
  }

  @Test
  void a_number_left_unfinished_belongs_to_the_tooth_that_was_shown() throws Exception {
    OnStage.run(
        () -> {
          TextField field = (TextField) scene().lookup("#card-tooth-height");
          field.requestFocus();
          field.setText("8");
          w.table().select(Subject.of(Tooth.T45));
          return null;
        });
    Thread.sleep(200);
    assertThat(of(Tooth.T45).crownHeight()).isEmpty();
    assertThat(of(Tooth.T46).crownHeight()).contains(8.0);
  }

  @Test
  void tab_walks_the_zones_in_the_order_of_the_chart() throws Exception {
    List<String> order = new ArrayList<>();
    OnStage.run(
        () -> {
          for (Node n : scene().getRoot().lookupAll(".knob")) {
            if (n.isFocusTraversable() && n.isVisible()) {
              order.add(n.getId());
            }
          }
          return null;
        });
    assertThat(order)
        .startsWith(
            "knob-undercut-mesiobuccal",
            "knob-undercut-mid-buccal",
            "knob-undercut-distobuccal",
            "knob-undercut-mesiolingual",
            "knob-undercut-mid-lingual",
            "knob-undercut-distolingual",
            "knob-room-mesial-occlusal");
  }

  @Test
  void page_keys_go_to_the_next_tooth_and_the_selection_with_them() throws Exception {
    key("undercut-mesiobuccal", KeyCode.PAGE_DOWN);
    assertThat(OnStage.run(() -> ((Label) scene().lookup("#card-title")).getText()))
        .isEqualTo("45, lower right second premolar");
    assertThat(OnStage.run(() -> w.table().selected())).contains(Subject.of(Tooth.T45));
  }

  @Test
  void a_double_click_on_a_tooth_of_the_sheet_opens_its_card() throws Exception {
    OnStage.run(
        () -> {
          w.table().cardShownProperty().set(false);
          w.table().stepProperty().set(Step.REVIEW);
          return null;
        });
    w.click(26, 0, 0);
    assertThat(OnStage.run(() -> w.table().cardShownProperty().get())).isFalse();
    w.doubleClick(26, 0, 0);
    assertThat(OnStage.run(() -> w.table().cardShownProperty().get())).isTrue();
    assertThat(OnStage.run(() -> ((Label) scene().lookup("#card-title")).getText()))
        .startsWith("26, ");
  }
}
