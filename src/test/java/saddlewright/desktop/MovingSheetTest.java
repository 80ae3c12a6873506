package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.geometry.Point;

/**
 * The sheet is zoomed and moved by wheel, fingers, buttons and keys, as a picture while it moves.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MovingSheetTest {
  private static final Point SOMEWHERE = new Point(12, 20);

  private OnStage w;
  private SheetPane sheet;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    sheet = w.window.sheet();
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  @BeforeEach
  void lay() throws Exception {
    var c = CaseStore.load(Path.of("demo-cases", "03-both-arches.json"));
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          w.table().stepProperty().set(Step.REVIEW);
          sheet.fit();
          return null;
        });
    w.settle();
  }

  private Point at(Arch arch, Point p) throws Exception {
    return OnStage.run(() -> sheet.toPane(arch, p).orElseThrow());
  }

  private double scale() throws Exception {
    return OnStage.run(() -> sheet.camera().scaleProperty().get());
  }

  private ScrollEvent scroll(
      javafx.event.EventType<ScrollEvent> type, boolean shift, double dx, double dy) {
    var scene = sheet.localToScene(300, 200);
    return new ScrollEvent(
        type,
        scene.getX(),
        scene.getY(),
        300,
        200,
        shift,
        false,
        false,
        false,
        false,
        false,
        dx,
        dy,
        dx,
        dy,
        ScrollEvent.HorizontalTextScrollUnits.NONE,
        0,
        ScrollEvent.VerticalTextScrollUnits.NONE,
        0,
        0,
        null);
  }

  private void fire(Event e) throws Exception {
    OnStage.run(
        () -> {
          Event.fireEvent(sheet, e);
          return null;
        });
  }

  private void mouse(
      javafx.event.EventType<MouseEvent> type, MouseButton button, double x, double y)
      throws Exception {
    fire(
        new MouseEvent(
            type, x, y, x, y, button, 1, false, false, false, false, false, false, false, false,
            false, true, null));
  }

  private boolean isPicture() throws Exception {
    return OnStage.run(
        () -> sheet.getChildren().stream().anyMatch(n -> n instanceof ImageView && n.isVisible()));
  }

  private void rest() throws Exception {
    for (int i = 0; i < 300 && isPicture(); i++) {
      Thread.sleep(10);
    }
    assertThat(isPicture()).isFalse();
  }

  @Test
  void a_wheel_zooms_about_the_pointer() throws Exception {
    double before = scale();
    Point under = OnStage.run(() -> sheet.camera().toSheet(300, 200));
    fire(scroll(ScrollEvent.SCROLL, false, 0, 40));
    assertThat(scale()).isCloseTo(before * 1.12, within(1e-6));
    Point now = OnStage.run(() -> sheet.camera().toSheet(300, 200));
    assertThat(now.distanceTo(under)).isLessThan(0.3);
    fire(scroll(ScrollEvent.SCROLL, false, 0, -40));
    assertThat(scale()).isCloseTo(before, within(1e-6));
  }

  @Test
  void two_fingers_move_the_sheet_and_pinch_it() throws Exception {
    double before = scale();
    Point from = at(Arch.UPPER, SOMEWHERE);
    fire(scroll(ScrollEvent.SCROLL_STARTED, false, 0, 0));
    fire(scroll(ScrollEvent.SCROLL, false, 0, -31));
    fire(scroll(ScrollEvent.SCROLL_FINISHED, false, 0, 0));
    assertThat(scale()).isEqualTo(before);
    assertThat(at(Arch.UPPER, SOMEWHERE).y()).isCloseTo(from.y() - 31, within(0.6));
    fire(
        new ZoomEvent(
            ZoomEvent.ZOOM,
            300,
            200,
            300,
            200,
            false,
            false,
            false,
            false,
            false,
            false,
            1.5,
            1.5,
            null));
    assertThat(scale()).isCloseTo(before * 1.5, within(1e-6));
  }

  @Test
  void shift_and_the_wheel_move_it_sideways() throws Exception {
    Point from = at(Arch.UPPER, SOMEWHERE);
    fire(scroll(ScrollEvent.SCROLL, true, 0, 40));
    Point to = at(Arch.UPPER, SOMEWHERE);
    assertThat(to.x()).isCloseTo(from.x() + 40, within(0.6));
    assertThat(to.y()).isCloseTo(from.y(), within(0.6));
  }

  @Test
  void the_middle_button_and_space_drag_it_and_change_nothing() throws Exception {
    var case0 = w.table().current();
    Point from = at(Arch.LOWER, SOMEWHERE);
    mouse(MouseEvent.MOUSE_PRESSED, MouseButton.MIDDLE, 200, 200);
    mouse(MouseEvent.MOUSE_DRAGGED, MouseButton.MIDDLE, 230, 190);
    mouse(MouseEvent.MOUSE_RELEASED, MouseButton.MIDDLE, 230, 190);
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.SPACE, false, false, false, false));
    mouse(MouseEvent.MOUSE_PRESSED, MouseButton.PRIMARY, 200, 200);
    mouse(MouseEvent.MOUSE_DRAGGED, MouseButton.PRIMARY, 211, 222);
    mouse(MouseEvent.MOUSE_RELEASED, MouseButton.PRIMARY, 211, 222);
    fire(new KeyEvent(KeyEvent.KEY_RELEASED, "", "", KeyCode.SPACE, false, false, false, false));
    Point to = at(Arch.LOWER, SOMEWHERE);
    assertThat(to.x()).isCloseTo(from.x() + 41, within(1.1));
    assertThat(to.y()).isCloseTo(from.y() + 12, within(1.1));
    assertThat(w.table().current()).isEqualTo(case0);
    assertThat(w.table().selectionProperty().get()).isEmpty();
  }

  @Test
  void while_it_moves_the_picture_shows_what_the_sheet_will_show() throws Exception {
    OnStage.run(
        () -> {
          // Signs keep clear of what is seen: they are set anew when the sheet rests.
          w.table().markersProperty().set(false);
          sheet.zoom(2);
          return null;
        });
    rest();
    fire(scroll(ScrollEvent.SCROLL, true, 24, 0));
    assertThat(isPicture()).isTrue();
    int[] moved = pixels();
    rest();
    int[] still = pixels();
    int same = 0;
    int inked = 0;
    for (int i = 0; i < still.length; i++) {
      same += still[i] == moved[i] ? 1 : 0;
      inked += still[i] == still[0] ? 0 : 1;
    }
    assertThat(inked).isGreaterThan(still.length / 10);
    // What came into view at the edge was taken from the coarser picture of the page.
    assertThat(same / (double) still.length).isGreaterThan(0.95);
  }

  private int[] pixels() throws Exception {
    return OnStage.run(
        () -> {
          Image image = sheet.snapshot(null, (WritableImage) null);
          int width = (int) image.getWidth();
          int[] out = new int[width * (int) image.getHeight()];
          for (int i = 0; i < out.length; i++) {
            out[i] = image.getPixelReader().getArgb(i % width, i / width);
          }
          return out;
        });
  }

  @Test
  void an_edit_in_the_middle_of_a_movement_is_seen_at_once() throws Exception {
    fire(scroll(ScrollEvent.SCROLL, false, 0, 40));
    assertThat(isPicture()).isTrue();
    var next = CaseStore.load(Path.of("demo-cases", "01-lower-class-1-rpi.json"));
    OnStage.run(
        () -> {
          w.table().apply("another", next);
          return null;
        });
    assertThat(isPicture()).isFalse();
  }

  @Test
  void what_is_selected_is_shown_closely_and_true_size_is_that_of_the_screen() throws Exception {
    OnStage.run(
        () -> {
          w.table().select(Subject.of(Tooth.T36));
          sheet.fitSelection();
          return null;
        });
    Point middle = OnStage.run(() -> middleOf(36));
    double width = OnStage.run(sheet::getWidth);
    double height = OnStage.run(sheet::getHeight);
    assertThat(middle.distanceTo(new Point(width / 2, height / 2))).isLessThan(60);
    assertThat(scale()).isGreaterThan(10);
    OnStage.run(
        () -> {
          sheet.camera().trueScaleProperty().set(4.5);
          sheet.trueSize();
          return null;
        });
    assertThat(scale()).isCloseTo(4.5, within(1e-9));
    assertThat(OnStage.run(() -> w.find("status-zoom", javafx.scene.control.Label.class).getText()))
        .contains("100");
  }

  private Point middleOf(int fdi) {
    Tooth t = Tooth.of(fdi);
    return sheet
        .toPane(t.arch(), w.table().assessment().arch(t.arch()).form().tooth(t).at(0, 0))
        .orElseThrow();
  }

  @Test
  void the_view_stays_when_an_edit_makes_the_page_larger_and_when_it_is_undone() throws Exception {
    OnStage.run(
        () -> {
          sheet.zoom(1.6);
          return null;
        });
    rest();
    double zoom = scale();
    Point before = at(Arch.LOWER, SOMEWHERE);
    OnStage.run(
        () -> {
          w.table().numbersProperty().set(true);
          return null;
        });
    assertThat(
            OnStage.run(() -> sheet.getChildren().stream().map(Node::getBoundsInParent).toList()))
        .isNotEmpty();
    assertThat(at(Arch.LOWER, SOMEWHERE).distanceTo(before)).isLessThan(1.5);
    OnStage.run(
        () -> {
          w.table().numbersProperty().set(false);
          return null;
        });
    assertThat(at(Arch.LOWER, SOMEWHERE).distanceTo(before)).isLessThan(1.5);
    assertThat(scale()).isEqualTo(zoom);
  }
}
