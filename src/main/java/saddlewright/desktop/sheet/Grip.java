package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import saddlewright.casefile.Case;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.sheet.handles.Handle;
import saddlewright.desktop.sheet.handles.Reading;
import saddlewright.desktop.sheet.handles.Slide;
import saddlewright.desktop.sheet.handles.Steps;
import saddlewright.desktop.sheet.handles.Stop;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.tools.Proposal;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.geometry.Vector;
import saddlewright.rules.Situation;

/** A handle on the sheet: dragged with the pointer, or moved with the arrow keys. */
final class Grip extends StackPane {
  /** Width and height of what can be grabbed, pixels. */
  static final double TARGET = 26;

  private static final double SHAPE = 6;

  /** Presses of a key that follow each other within this are one edit, milliseconds. */
  private static final long ONE_NUDGE = 1000;

  private static final PseudoClass WARNING = PseudoClass.getPseudoClass("warning");

  private final Grips all;
  private final SheetPane sheet;
  private final Worktable table;
  private final Ghost ghost;
  private Handle handle;
  private Point stands = Point.ORIGIN;
  private Optional<Stop> aimed = Optional.empty();
  private boolean dragging;
  private boolean cancelled;
  private double offX;
  private double offY;
  private Gesture nudging = new Gesture();
  private long nudgedAt = Long.MIN_VALUE;

  Grip(Grips all, SheetPane sheet, Worktable table, Ghost ghost) {
    this.all = all;
    this.sheet = sheet;
    this.table = table;
    this.ghost = ghost;
    getStyleClass().add("grip");
    setManaged(false);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    setPrefSize(TARGET, TARGET);
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    addEventHandler(
        MouseEvent.MOUSE_MOVED,
        e -> {
          tell();
          e.consume();
        });
    addEventHandler(
        MouseEvent.MOUSE_EXITED,
        e -> {
          if (!dragging) {
            ghost.clear();
          }
        });
    addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                tell();
              } else {
                ghost.clear();
              }
            });
  }

  Handle handle() {
    return handle;
  }

  /** Takes over what it is to move. */
  void take(Handle h) {
    handle = h;
    setId("handle-" + h.id());
    if (getChildren().isEmpty()) {
      Shape shape = shape();
      shape.getStyleClass().add("handle");
      getChildren().setAll(shape);
      setCursor(cursor());
    }
    List<Reading> readings = h.readings(table.assessment().arch(h.arch()));
    pseudoClassStateChanged(WARNING, readings.stream().anyMatch(Reading::warning));
    setAccessibleText(words(h.track().words(), readings).replace('\n', '.'));
  }

  /** Round on a line, a lozenge where there are a few places, a square where it may be anywhere. */
  private Shape shape() {
    if (handle.track() instanceof Slide) {
      return new Circle(SHAPE);
    }
    Rectangle square = new Rectangle(2 * SHAPE - 1, 2 * SHAPE - 1);
    square.setRotate(handle.track() instanceof Steps ? 45 : 0);
    return square;
  }

  private Cursor cursor() {
    if (handle.track() instanceof Slide s) {
      return Math.abs(s.along().x()) > Math.abs(s.along().y()) ? Cursor.H_RESIZE : Cursor.V_RESIZE;
    }
    return handle.track() instanceof Steps ? Cursor.OPEN_HAND : Cursor.MOVE;
  }

  /** Stands with its middle at a place of the pane. */
  void standAt(Point p) {
    stands = p;
    if (!dragging) {
      resizeRelocate(p.x() - TARGET / 2, p.y() - TARGET / 2, TARGET, TARGET);
    }
  }

  private void pressed(MouseEvent e) {
    if (e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    requestFocus();
    Point2D at = sheet.sceneToLocal(e.getSceneX(), e.getSceneY());
    grab(at.getX(), at.getY());
    e.consume();
  }

  /** Takes hold of it from a place of the pane. */
  void grab(double x, double y) {
    Point here = sheet.toPane(handle.arch(), handle.track().here()).orElse(stands);
    // Of a few places the one under the pointer is meant; a length is not to jump when grasped.
    boolean places = handle.track() instanceof Steps;
    offX = places ? 0 : x - here.x();
    offY = places ? 0 : y - here.y();
    dragging = true;
    cancelled = false;
    aimed = Optional.empty();
    all.hold(this);
    if (handle.track() instanceof Steps) {
      setCursor(Cursor.CLOSED_HAND);
    }
  }

  private void dragged(MouseEvent e) {
    if (!dragging) {
      return;
    }
    Point2D at = sheet.sceneToLocal(e.getSceneX(), e.getSceneY());
    dragTo(at.getX(), at.getY(), e.isControlDown() || e.isAltDown());
    e.consume();
  }

  void dragTo(double x, double y, boolean fine) {
    Optional<Transform> place = sheet.place(handle.arch());
    if (cancelled || place.isEmpty()) {
      return;
    }
    Point p = place.get().inverse().apply(sheet.camera().toSheet(x - offX, y - offY));
    Stop stop = handle.track().nearest(p, fine);
    if (!aimed.map(s -> s.at().equals(stop.at())).orElse(false)) {
      aimed = Optional.of(stop);
      ghost.draw(proposal(stop));
    }
    Situation next = ghost.next().orElse(table.assessment().arch(handle.arch()));
    say(stop.words(), handle.readings(next), x, y);
    sheet
        .toPane(handle.arch(), stop.at())
        .ifPresent(c -> relocate(c.x() - TARGET / 2, c.y() - TARGET / 2));
  }

  private void released(MouseEvent e) {
    if (dragging && e.getButton() == MouseButton.PRIMARY) {
      drop();
      e.consume();
    }
  }

  /** Lets it go where it is. */
  void drop() {
    Optional<Stop> stop = aimed.filter(s -> !cancelled);
    end();
    stop.map(this::proposal).ifPresent(p -> table.apply(p.name(), p.next()));
    all.release();
  }

  private void end() {
    dragging = false;
    aimed = Optional.empty();
    ghost.clear();
    setCursor(cursor());
  }

  /** Puts it back; what is dragged on means nothing. */
  void cancel() {
    cancelled = true;
    aimed = Optional.empty();
    ghost.clear();
    standBack();
  }

  private void standBack() {
    relocate(stands.x() - TARGET / 2, stands.y() - TARGET / 2);
  }

  private Proposal proposal(Stop stop) {
    Case next = table.current().with(handle.arch(), stop.edit());
    String of =
        table
            .current()
            .design(handle.arch())
            .find(handle.component())
            .map(ComponentWords::brief)
            .orElse("");
    return new Proposal(
        Words.of("edit.handle", of, handle.name().toLowerCase(java.util.Locale.ROOT), stop.words()),
        handle.arch(),
        next);
  }

  private void typed(KeyEvent e) {
    KeyCode code = e.getCode();
    if (code == KeyCode.ESCAPE) {
      if (dragging) {
        cancel();
      } else {
        ghost.clear();
        sheet.requestFocus();
      }
      e.consume();
    } else if (dragging) {
      // While it is held no key may move the focus, or the handle, away from under the pointer.
      e.consume();
    } else if (code.isArrowKey() && !e.isControlDown() && !e.isAltDown() && !e.isMetaDown()) {
      nudge(code, e.isShiftDown());
      e.consume();
    }
  }

  private void nudge(KeyCode code, boolean fine) {
    Vector onScreen =
        switch (code) {
          case LEFT, KP_LEFT -> new Vector(-1, 0);
          case RIGHT, KP_RIGHT -> new Vector(1, 0);
          case UP, KP_UP -> new Vector(0, -1);
          default -> new Vector(0, 1);
        };
    Optional<Vector> towards = sheet.place(handle.arch()).map(t -> t.inverse().apply(onScreen));
    Optional<Stop> next = towards.flatMap(v -> handle.track().next(v, fine));
    if (next.isEmpty()) {
      ghost.clear();
      say(Words.of("handle.no-farther", handle.track().words()), List.of());
      return;
    }
    long now = System.currentTimeMillis();
    if (now - nudgedAt > ONE_NUDGE) {
      nudging = new Gesture();
    }
    nudgedAt = now;
    Proposal p = proposal(next.get());
    table.apply(p.name(), p.next(), nudging);
    tell();
  }

  /** Says beside it what it is and what the rules say of it as it is. */
  private void tell() {
    if (!dragging) {
      ghost.clear();
      say(handle.track().words(), handle.readings(table.assessment().arch(handle.arch())));
    }
  }

  private void say(String where, List<Reading> readings) {
    say(where, readings, stands.x(), stands.y());
  }

  private void say(String where, List<Reading> readings, double x, double y) {
    boolean warning = readings.stream().anyMatch(Reading::warning);
    ghost.say(words(where, readings), warning, x, y);
  }

  private String words(String where, List<Reading> readings) {
    List<String> lines = new ArrayList<>();
    lines.add(Words.of("handle.at", handle.name(), where));
    for (Reading r : readings) {
      lines.add(r.warning() ? Words.of("handle.warning", r.words()) : r.words());
    }
    return String.join("\n", lines);
  }
}
