package saddlewright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.desktop.findings.FindingsPane;
import saddlewright.desktop.panels.OrderOfWork;
import saddlewright.desktop.panels.SubjectPane;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;

/** A window for tests, worked by pointer: clicks on its buttons and on places of the sheet. */
final class OnStage implements AutoCloseable {
  final EditorWindow window;
  private int clicks = 1;
  private final Stage stage;

  private OnStage(EditorWindow window, Stage stage) {
    this.window = window;
    this.stage = stage;
  }

  static OnStage open(Path settings) throws Exception {
    startToolkit();
    return run(
        () -> {
          Stage stage = new Stage();
          return new OnStage(new EditorWindow(stage, settings), stage);
        });
  }

  static void startToolkit() throws Exception {
    CompletableFuture<Void> started = new CompletableFuture<>();
    try {
      Platform.startup(() -> started.complete(null));
    } catch (IllegalStateException alreadyStarted) {
      started.complete(null);
    }
    started.get(60, TimeUnit.SECONDS);
    Platform.setImplicitExit(false);
  }

  static <T> T run(Callable<T> action) throws Exception {
    CompletableFuture<T> result = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            result.complete(action.call());
          } catch (Throwable failure) {
            result.completeExceptionally(failure);
          }
        });
    return result.get(60, TimeUnit.SECONDS);
  }

  /** How many colours a picture holds: one for a blank page, many for a drawing and text. */
  static long coloursOf(WritableImage image) {
    int width = (int) image.getWidth();
    return IntStream.range(0, width * (int) image.getHeight())
        .map(i -> image.getPixelReader().getArgb(i % width, i / width))
        .distinct()
        .count();
  }

  /** Waits until what was put off has run. */
  void settle() throws Exception {
    for (int i = 0; i < 500; i++) {
      // The panels are built shortly after the welcome page is shown.
      SubjectPane subject = run(() -> find("subject", SubjectPane.class));
      FindingsPane findings = run(() -> find("findings", FindingsPane.class));
      OrderOfWork order = run(() -> (OrderOfWork) stage.getScene().lookup(".order-of-work"));
      if (subject != null
          && run(() -> subject.isSettled() && findings.isSettled() && order.isSettled())) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("the subject panel does not come to rest");
  }

  Worktable table() {
    return window.table();
  }

  /** Presses a button by its id. */
  void press(String id) throws Exception {
    run(
        () -> {
          Node n = stage.getScene().lookup("#" + id);
          if (!(n instanceof ButtonBase b)) {
            throw new AssertionError("no button " + id);
          }
          b.fire();
          // What has come or gone moves the sheet when it is laid out, and with it what is pointed
          // at.
          stage.getScene().getRoot().applyCss();
          stage.getScene().getRoot().layout();
          return null;
        });
    settle();
  }

  <N extends Node> N find(String id, Class<N> kind) {
    return kind.cast(stage.getScene().lookup("#" + id));
  }

  /** Clicks at shares of a crown: mesial and buccal positive, 1 at its edge. */
  void click(int fdi, double mesial, double buccal) throws Exception {
    Point p = place(fdi, mesial, buccal);
    mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
    mouse(MouseEvent.MOUSE_PRESSED, p, MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_RELEASED, p, MouseButton.PRIMARY);
    settle();
  }

  /** Clicks at a place of an arch, in mm of its own frame. */
  void clickAt(Arch arch, Point at) throws Exception {
    Point p = run(() -> window.sheet().toPane(arch, at).orElseThrow());
    mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
    mouse(MouseEvent.MOUSE_PRESSED, p, MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_RELEASED, p, MouseButton.PRIMARY);
    settle();
  }

  void hoverAt(Arch arch, Point at) throws Exception {
    Point p = run(() -> window.sheet().toPane(arch, at).orElseThrow());
    mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
    settle();
  }

  /** The second click of two. */
  void doubleClick(int fdi, double mesial, double buccal) throws Exception {
    clicks = 2;
    try {
      click(fdi, mesial, buccal);
    } finally {
      clicks = 1;
    }
  }

  void hover(int fdi, double mesial, double buccal) throws Exception {
    mouse(MouseEvent.MOUSE_MOVED, place(fdi, mesial, buccal), MouseButton.NONE);
    settle();
  }

  /** Drags over the middles of crowns. */
  void drag(int... fdis) throws Exception {
    Point p = place(fdis[0], 0, 0);
    mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
    mouse(MouseEvent.MOUSE_PRESSED, p, MouseButton.PRIMARY);
    for (int fdi : fdis) {
      p = place(fdi, 0, 0);
      mouse(MouseEvent.MOUSE_DRAGGED, p, MouseButton.PRIMARY);
    }
    mouse(MouseEvent.MOUSE_RELEASED, p, MouseButton.PRIMARY);
    settle();
  }

  /** Drags a component from its body to the middle of a crown. */
  void dragFrom(Arch arch, ComponentId id, int fdi) throws Exception {
    Laid laid = run(() -> table().assessment().arch(arch).layout().find(id).orElseThrow());
    Point from = run(() -> window.sheet().toPane(arch, laid.body().innerPoint()).orElseThrow());
    Point to = place(fdi, 0, 0);
    mouse(MouseEvent.MOUSE_MOVED, from, MouseButton.NONE);
    mouse(MouseEvent.MOUSE_PRESSED, from, MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_DRAGGED, from.towards(to, 0.5), MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_DRAGGED, to, MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_RELEASED, to, MouseButton.PRIMARY);
    settle();
  }

  /** Clicks on the midline of an arch, at a depth in mm. */
  void clickMidline(Arch arch, double y) throws Exception {
    Point p = run(() -> window.sheet().toPane(arch, new Point(0, y)).orElseThrow());
    mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
    mouse(MouseEvent.MOUSE_PRESSED, p, MouseButton.PRIMARY);
    mouse(MouseEvent.MOUSE_RELEASED, p, MouseButton.PRIMARY);
    settle();
  }

  /** Clicks on a component, up to ten times at one place, until it is what is selected. */
  boolean selectByClicking(Arch arch, ComponentId id) throws Exception {
    Laid laid = run(() -> table().assessment().arch(arch).layout().find(id).orElseThrow());
    Subject wanted = new Subject.OfComponent(arch, id);
    for (Point at : places(laid)) {
      Point p = run(() -> window.sheet().toPane(arch, at).orElseThrow());
      for (int i = 0; i < 10; i++) {
        mouse(MouseEvent.MOUSE_MOVED, p, MouseButton.NONE);
        mouse(MouseEvent.MOUSE_PRESSED, p, MouseButton.PRIMARY);
        mouse(MouseEvent.MOUSE_RELEASED, p, MouseButton.PRIMARY);
        if (run(() -> table().selected()).equals(java.util.Optional.of(wanted))) {
          settle();
          return true;
        }
      }
    }
    return false;
  }

  private static List<Point> places(Laid laid) {
    List<Point> out = new java.util.ArrayList<>();
    if (!laid.body().isEmpty()) {
      out.add(laid.body().innerPoint());
    }
    laid.details().forEach(d -> out.add(d.at(d.length() / 2)));
    if (laid.component() instanceof Note n) {
      out.add(new Point(n.x(), n.y()));
    }
    return out;
  }

  void key(KeyCode code) throws Exception {
    run(
        () -> {
          Event.fireEvent(
              window.sheet(),
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
          return null;
        });
    settle();
  }

  /** A handle of what is selected, by its id. */
  Node handle(String id) throws Exception {
    Node n = run(() -> stage.getScene().lookup("#handle-" + id));
    if (n == null) {
      throw new AssertionError("no handle " + id);
    }
    return n;
  }

  /** Takes hold of a handle and moves it by millimetres of the sheet, downwards on the screen. */
  void pull(String id, double dx, double dy, boolean fine) throws Exception {
    Node n = handle(id);
    on(n, MouseEvent.MOUSE_PRESSED, 0, 0, false);
    on(n, MouseEvent.MOUSE_DRAGGED, dx / 2, dy / 2, fine);
    on(n, MouseEvent.MOUSE_DRAGGED, dx, dy, fine);
  }

  /** Drags a handle to the middle of a crown, and lets it go. */
  void pullTo(String id, int fdi) throws Exception {
    Point to = place(fdi, 0, 0);
    Node n = handle(id);
    Point by =
        run(
            () -> {
              javafx.geometry.Bounds b = n.localToScene(n.getBoundsInLocal());
              javafx.geometry.Point2D from =
                  window.sheet().sceneToLocal(b.getCenterX(), b.getCenterY());
              double scale = window.sheet().camera().scaleProperty().get();
              return new Point((to.x() - from.getX()) / scale, (to.y() - from.getY()) / scale);
            });
    pull(id, by.x(), by.y(), false);
    letGo(id);
  }

  /** Lets go of a handle. */
  void letGo(String id) throws Exception {
    on(handle(id), MouseEvent.MOUSE_RELEASED, 0, 0, false);
    settle();
  }

  private Point pulledFrom = Point.ORIGIN;

  private void on(
      Node n, javafx.event.EventType<MouseEvent> type, double dx, double dy, boolean fine)
      throws Exception {
    run(
        () -> {
          if (type == MouseEvent.MOUSE_PRESSED) {
            javafx.geometry.Bounds b = n.localToScene(n.getBoundsInLocal());
            pulledFrom = new Point(b.getCenterX(), b.getCenterY());
          }
          double scale = window.sheet().camera().scaleProperty().get();
          double x = pulledFrom.x() + dx * scale;
          double y = pulledFrom.y() + dy * scale;
          boolean down = type != MouseEvent.MOUSE_RELEASED;
          javafx.geometry.Point2D screen =
              new javafx.geometry.Point2D(
                  x + n.getScene().getWindow().getX(), y + n.getScene().getWindow().getY());
          Event.fireEvent(
              n,
              new MouseEvent(
                  type,
                  x,
                  y,
                  screen.getX(),
                  screen.getY(),
                  MouseButton.PRIMARY,
                  1,
                  false,
                  fine,
                  false,
                  false,
                  down,
                  false,
                  false,
                  false,
                  false,
                  !down,
                  null));
          return null;
        });
  }

  /** Presses a key on a node. */
  void key(Node n, KeyCode code, boolean shift) throws Exception {
    run(
        () -> {
          Event.fireEvent(
              n, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
          return null;
        });
    settle();
  }

  String caption() throws Exception {
    return run(
        () -> {
          javafx.scene.control.Label l = find("ghost-caption", javafx.scene.control.Label.class);
          return l.isVisible() ? l.getText() : "";
        });
  }

  private Point place(int fdi, double mesial, double buccal) throws Exception {
    Tooth tooth = Tooth.of(fdi);
    return run(
        () -> {
          PlacedTooth t = table().assessment().arch(tooth.arch()).form().tooth(tooth);
          return window
              .sheet()
              .toPane(tooth.arch(), t.at(mesial, buccal))
              .orElseThrow(() -> new AssertionError(tooth + " is not shown"));
        });
  }

  /** The keys that are held during what the mouse does. */
  enum Held {
    NONE,
    SHIFT,
    ALT
  }

  private Held held = Held.NONE;

  /** Does something with a key held. */
  void with(Held key, java.util.concurrent.Callable<Void> doing) throws Exception {
    held = key;
    try {
      doing.call();
    } finally {
      held = Held.NONE;
    }
  }

  private void mouse(javafx.event.EventType<MouseEvent> type, Point p, MouseButton button)
      throws Exception {
    run(
        () -> {
          SheetPane sheet = window.sheet();
          javafx.geometry.Point2D screen = sheet.localToScreen(p.x(), p.y());
          javafx.geometry.Point2D scene = sheet.localToScene(p.x(), p.y());
          boolean down = button == MouseButton.PRIMARY && type != MouseEvent.MOUSE_RELEASED;
          Event.fireEvent(
              sheet,
              new MouseEvent(
                  type,
                  scene.getX(),
                  scene.getY(),
                  screen.getX(),
                  screen.getY(),
                  button,
                  clicks,
                  held == Held.SHIFT,
                  false,
                  held == Held.ALT,
                  false,
                  down,
                  false,
                  button == MouseButton.SECONDARY,
                  false,
                  false,
                  true,
                  null));
          return null;
        });
  }

  /** A picture of the window. */
  WritableImage picture() throws Exception {
    return run(() -> stage.getScene().snapshot(null));
  }

  List<String> texts(String id) throws Exception {
    return run(
        () ->
            stage.getScene().lookup("#" + id).lookupAll(".label").stream()
                .map(n -> ((javafx.scene.control.Labeled) n).getText())
                .toList());
  }

  @Override
  public void close() throws Exception {
    run(
        () -> {
          List<EditorWindow> open = new java.util.ArrayList<>(window.desks().all());
          if (!open.contains(window)) {
            open.add(window);
          }
          for (EditorWindow d : open) {
            // As when it is left: nothing is written any more into a folder that is to be deleted.
            d.files().leave();
            d.stage().hide();
          }
          stage.hide();
          return null;
        });
  }
}
