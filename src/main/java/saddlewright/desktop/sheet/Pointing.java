package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import saddlewright.casefile.Case;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.sheet.Offers.Offer;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Refusal;
import saddlewright.desktop.tools.Tool;
import saddlewright.desktop.tools.ToolBox;

/** Follows the pointer over the sheet: ghosts, clicks, dragging, panning, the wheel. */
final class Pointing {
  private static final double CLICK = 4;

  /** Farther on, the usual form is proposed again, pixels. */
  private static final double ELSEWHERE = 12;

  private final SheetPane sheet;
  private final Worktable table;
  private final Offers offers;
  private final Ghost ghost;
  private final Grips grips;
  private final Press press;
  private final Walking walking;
  private double lastX;
  private double lastY;
  private double downX;
  private double downY;
  private boolean over;
  private boolean bothSides;
  private boolean spaceDown;
  private Optional<Drag> drag = Optional.empty();

  Pointing(
      SheetPane sheet, Worktable table, ToolBox tools, Ghost ghost, Grips grips, Walking walking) {
    this.sheet = sheet;
    this.table = table;
    this.offers = new Offers(table, tools);
    this.ghost = ghost;
    this.grips = grips;
    this.press = new Press(sheet, table);
    this.walking = walking;
    sheet.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
    sheet.addEventHandler(
        MouseEvent.MOUSE_EXITED,
        e -> {
          over = false;
          ghost.clear();
        });
    sheet.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    sheet.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    sheet.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    sheet.addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    sheet.addEventHandler(KeyEvent.ANY, this::held);
    sheet.focusedProperty().addListener(o -> spaceDown = false);
    tools
        .inHandProperty()
        .addListener(
            o -> {
              offers.begin();
              ghost.clear();
            });
  }

  private void moved(MouseEvent e) {
    if (Math.hypot(e.getX() - lastX, e.getY() - lastY) > ELSEWHERE) {
      offers.begin();
    }
    over = true;
    bothSides = e.isAltDown();
    lastX = e.getX();
    lastY = e.getY();
    hover();
  }

  private void hover() {
    Optional<Aim> aim = sheet.aim(lastX, lastY);
    Optional<Offer> offer = aim.flatMap(a -> offers.at(a, bothSides));
    if (offer.isPresent()) {
      ghost.show(offer.get().proposal(), offer.get().more(), lastX, lastY);
      cursor(Cursor.CROSSHAIR);
      return;
    }
    Optional<Refusal> refusal = aim.flatMap(offers::refusal);
    if (refusal.isPresent()) {
      ghost.refuse(refusal.get().words(), lastX, lastY);
    } else {
      ghost.clear();
    }
    cursor(aim.filter(a -> !sheet.pick(a).isEmpty()).isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  private void cursor(Cursor wanted) {
    Cursor shown = spaceDown ? Cursor.OPEN_HAND : wanted;
    if (sheet.getCursor() != shown) {
      sheet.setCursor(shown);
    }
  }

  private void pressed(MouseEvent e) {
    sheet.requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    downX = lastX;
    downY = lastY;
    bothSides = e.isAltDown();
    drag = Optional.empty();
    if (e.getButton() == MouseButton.SECONDARY) {
      ghost.clear();
      menu(e);
    } else if (e.getButton() == MouseButton.MIDDLE
        || spaceDown && e.getButton() == MouseButton.PRIMARY) {
      drag = Optional.of(new PanDrag(true));
    } else if (e.getButton() == MouseButton.PRIMARY) {
      drag = Optional.of(meant(e));
    }
    e.consume();
  }

  /** What dragging on from where the button went down would be. */
  private Drag meant(MouseEvent e) {
    Optional<Aim> aim = sheet.aim(lastX, lastY);
    if (aim.isEmpty() || isAdding(e)) {
      return new PanDrag(false);
    }
    Optional<Grip> body = body(aim.get());
    if (body.isPresent()) {
      return new GripDrag(body.get());
    }
    Optional<Tool> tool = offers.tool();
    if (tool.filter(Tool::isDragged).isPresent() && aim.get().inside()) {
      return new ChartDrag();
    }
    return tool.filter(t -> t.isStretched(aim.get(), table.assessment())).isPresent()
        ? new StretchDrag(sheet, offers, ghost, aim.get(), o -> place(o, aim.get()))
        : new PanDrag(false);
  }

  private void dragged(MouseEvent e) {
    bothSides = e.isAltDown();
    drag.ifPresent(d -> d.to(e));
    lastX = e.getX();
    lastY = e.getY();
  }

  private void released(MouseEvent e) {
    Optional<Drag> done = drag;
    drag = Optional.empty();
    lastX = e.getX();
    lastY = e.getY();
    bothSides = e.isAltDown();
    done.ifPresent(d -> d.drop(e));
    boolean click =
        e.getButton() == MouseButton.PRIMARY
            && done.filter(d -> d instanceof PanDrag p && p.panning).isEmpty()
            && done.filter(d -> d instanceof ChartDrag).isEmpty()
            && done.filter(d -> d instanceof StretchDrag s && s.isMoved()).isEmpty()
            && done.filter(d -> d instanceof GripDrag g && g.begun).isEmpty();
    if (click) {
      if (isAdding(e)) {
        add();
      } else if (e.getClickCount() == 2 && bareTooth().isPresent()) {
        table.select(bareTooth().get());
        table.cardShownProperty().set(true);
      } else {
        click();
      }
    }
    hover();
  }

  /** The tooth under the pointer, where a click would place nothing. */
  private Optional<Subject> bareTooth() {
    return sheet
        .aim(lastX, lastY)
        .filter(Aim::inside)
        .filter(a -> offers.at(a, false).isEmpty())
        .flatMap(Aim::tooth)
        .map(Subject::of);
  }

  private boolean isFar(MouseEvent e) {
    return Math.hypot(e.getX() - downX, e.getY() - downY) > CLICK;
  }

  private static boolean isAdding(MouseEvent e) {
    return e.isShortcutDown() || e.isShiftDown();
  }

  private void click() {
    sheet
        .aim(lastX, lastY)
        .ifPresentOrElse(a -> press.at(a, offers, bothSides), () -> table.select());
  }

  private void place(Offer offer, Aim aim) {
    press.place(offer.proposal(), aim);
    offers.begin();
  }

  /** Adds what lies there to the selection, or takes it out of it. */
  private void add() {
    List<Subject> there = sheet.aim(lastX, lastY).map(sheet::pick).orElse(List.of());
    if (there.isEmpty()) {
      return;
    }
    List<Subject> next = new ArrayList<>(table.selectionProperty().get());
    Optional<Subject> chosen = there.stream().filter(next::contains).findFirst();
    if (chosen.isPresent()) {
      next.remove(chosen.get());
    } else {
      next.add(there.get(0));
    }
    table.select(next.toArray(Subject[]::new));
  }

  /** The grip of the body of what is selected, when that is what lies under the pointer. */
  private Optional<Grip> body(Aim aim) {
    return sheet.pick(aim).stream()
        .findFirst()
        .filter(table.selectionProperty().get()::contains)
        .flatMap(
            s ->
                table.component(s).filter(Note.class::isInstance).isPresent()
                    ? grips.find("words")
                    : grips.body(s));
  }

  private void menu(MouseEvent e) {
    sheet
        .aim(lastX, lastY)
        .ifPresent(
            aim -> {
              List<Subject> there = sheet.pick(aim);
              if (!there.isEmpty()) {
                Subject s = table.selected().filter(there::contains).orElse(there.get(0));
                if (!table.selectionProperty().get().contains(s)) {
                  table.select(s);
                }
                sheet.menu(there).show(sheet, e.getScreenX(), e.getScreenY());
              }
            });
  }

  /** Keys that mean something only while they are down. */
  private void held(KeyEvent e) {
    boolean down = e.getEventType() == KeyEvent.KEY_PRESSED;
    if (e.getEventType() == KeyEvent.KEY_TYPED || e.getTarget() != sheet) {
      return;
    }
    if (e.getCode() == KeyCode.SPACE) {
      spaceDown = down;
      cursor(Cursor.DEFAULT);
    } else if (e.getCode() == KeyCode.ALT && over && drag.isEmpty() && bothSides != down) {
      boolean shown = ghost.isShown();
      bothSides = down;
      hover();
      if (shown && !down) {
        // Let go over a ghost it meant both sides, not the menu bar.
        e.consume();
      }
    }
  }

  private void typed(KeyEvent e) {
    if (e.getTarget() != sheet || walking.isShown()) {
      return;
    }
    if (e.getCode() == KeyCode.TAB && !e.isControlDown()) {
      if (ghost.isShown()
          && sheet
              .aim(lastX, lastY)
              .filter(a -> offers.turn(a, e.isShiftDown() ? -1 : 1))
              .isPresent()) {
        hover();
        e.consume();
      }
    } else if (e.getCode() == KeyCode.ESCAPE) {
      if (drag.isPresent()) {
        drag.get().cancel();
      } else {
        ghost.clear();
        table.findingProperty().set(Optional.empty());
        table.select();
      }
      e.consume();
    }
  }

  /** Moves the page; with the primary button only once it is no click. */
  private final class PanDrag implements Drag {
    private boolean panning;

    private PanDrag(boolean panning) {
      this.panning = panning;
    }

    @Override
    public void to(MouseEvent e) {
      if (!panning && isFar(e)) {
        panning = true;
      }
      if (panning) {
        ghost.clear();
        sheet.setCursor(Cursor.CLOSED_HAND);
        sheet.pan(e.getX() - lastX, e.getY() - lastY);
      }
    }
  }

  /** Charts the tooth where the button went down and those over which it is dragged. */
  private final class ChartDrag implements Drag {
    private final Gesture gesture = new Gesture();
    private boolean cancelled;
    private final Case before = table.current();

    private ChartDrag() {
      chart();
    }

    @Override
    public void to(MouseEvent e) {
      lastX = e.getX();
      lastY = e.getY();
      chart();
    }

    private void chart() {
      Optional<Aim> aim = sheet.aim(lastX, lastY).filter(Aim::inside);
      if (aim.isEmpty() || cancelled) {
        return;
      }
      offers
          .at(aim.get(), bothSides)
          .map(Offer::proposal)
          .ifPresent(p -> table.apply(p.name(), p.next(), gesture));
      table.select(Subject.of(aim.get().tooth().orElseThrow()));
    }

    /** Takes back what it has charted so far. */
    @Override
    public void cancel() {
      cancelled = true;
      if (table.current() != before) {
        table.undo();
      }
    }
  }

  /** Moves a handle that is grasped by more than its own node. */
  private final class GripDrag implements Drag {
    private final Grip grip;
    private boolean begun;

    private GripDrag(Grip grip) {
      this.grip = grip;
    }

    @Override
    public void to(MouseEvent e) {
      if (!begun && isFar(e)) {
        begun = true;
        grip.grab(downX, downY);
      }
      if (begun) {
        grip.dragTo(e.getX(), e.getY(), e.isShortcutDown() || e.isAltDown());
      }
    }

    @Override
    public void drop(MouseEvent e) {
      if (begun) {
        grip.drop();
      }
    }

    @Override
    public void cancel() {
      grip.cancel();
    }
  }
}
