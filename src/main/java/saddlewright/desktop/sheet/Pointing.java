package saddlewright.desktop.sheet;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import saddlewright.casefile.Case;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.subject.SubjectMenu;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.Tool;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;
import saddlewright.geometry.Point;

/** Follows the pointer over the sheet: ghosts, clicks, dragging, panning, the wheel. */
final class Pointing {
  private static final double NOTCH = 1.12;
  private static final double CLICK = 4;

  private final SheetPane sheet;
  private final Worktable table;
  private final ToolBox tools;
  private final Ghost ghost;
  private int alternative;
  private double lastX;
  private double lastY;
  private double downX;
  private double downY;
  private boolean panning;
  private boolean charting;
  private Gesture charted = new Gesture();
  private Optional<Note> dragged = Optional.empty();

  Pointing(SheetPane sheet, Worktable table, ToolBox tools, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.tools = tools;
    this.ghost = ghost;
    sheet.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
    sheet.addEventHandler(MouseEvent.MOUSE_EXITED, e -> ghost.clear());
    sheet.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    sheet.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    sheet.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    sheet.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    sheet.addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    tools
        .inHandProperty()
        .addListener(
            o -> {
              alternative = 0;
              ghost.clear();
            });
  }

  private void moved(MouseEvent e) {
    if (Math.hypot(e.getX() - lastX, e.getY() - lastY) > 12) {
      alternative = 0;
    }
    lastX = e.getX();
    lastY = e.getY();
    hover();
  }

  private void hover() {
    Optional<Aim> aim = sheet.aim(lastX, lastY);
    List<Proposal> offers = aim.map(this::offers).orElse(List.of());
    if (offers.isEmpty()) {
      ghost.clear();
      return;
    }
    Proposal p = offers.get(alternative % offers.size());
    String more =
        offers.size() > 1
            ? Words.of("ghost.alternatives", alternative % offers.size() + 1, offers.size())
            : "";
    ghost.show(p, more, lastX, lastY);
  }

  private List<Proposal> offers(Aim aim) {
    return tools
        .inHandProperty()
        .get()
        .map(ToolChoice::tool)
        .map(t -> t.proposals(aim, table.assessment()))
        .orElse(List.of());
  }

  private void pressed(MouseEvent e) {
    sheet.requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    downX = lastX;
    downY = lastY;
    charting = false;
    charted = new Gesture();
    dragged = Optional.empty();
    panning = e.getButton() == MouseButton.MIDDLE;
    if (e.getButton() == MouseButton.SECONDARY) {
      ghost.clear();
      menu(e);
    } else if (e.getButton() == MouseButton.PRIMARY) {
      dragged = noteUnder();
      Optional<Tool> tool = tools.inHandProperty().get().map(ToolChoice::tool);
      if (tool.map(Tool::isDragged).orElse(false)) {
        charting = chart(false);
      }
    }
    e.consume();
  }

  private void dragged(MouseEvent e) {
    double dx = e.getX() - lastX;
    double dy = e.getY() - lastY;
    lastX = e.getX();
    lastY = e.getY();
    boolean far = Math.hypot(lastX - downX, lastY - downY) > CLICK;
    if (charting) {
      chart(true);
    } else if (dragged.isPresent()) {
      if (far) {
        dragNote();
      }
    } else if (panning || far) {
      if (!panning) {
        panning = true;
        ghost.clear();
      }
      sheet.pan(dx, dy);
    }
  }

  private void released(MouseEvent e) {
    lastX = e.getX();
    lastY = e.getY();
    boolean far = Math.hypot(lastX - downX, lastY - downY) > CLICK;
    if (e.getButton() == MouseButton.PRIMARY && !charting && !panning) {
      if (dragged.isPresent() && far) {
        dragNote().ifPresent(next -> table.apply(Words.of("edit.move-note"), next));
      } else {
        click();
      }
    }
    panning = false;
    charting = false;
    dragged = Optional.empty();
    hover();
  }

  private void click() {
    Optional<Aim> aim = sheet.aim(lastX, lastY);
    if (aim.isEmpty()) {
      table.select();
      return;
    }
    List<Proposal> offers = offers(aim.get());
    if (offers.isEmpty()) {
      select(sheet.pick(aim.get()));
      return;
    }
    Proposal p = offers.get(alternative % offers.size());
    Case before = table.current();
    table.apply(p.name(), p.next());
    if (before.design(p.arch()).equals(p.next().design(p.arch()))) {
      aim.get().tooth().ifPresent(t -> table.select(Subject.of(t)));
    } else {
      table.selectNew(before.design(p.arch()), p.next().design(p.arch()));
    }
    alternative = 0;
  }

  /** Selects what is there; clicking again at the same place goes on to what lies below. */
  private void select(List<Subject> there) {
    if (there.isEmpty()) {
      table.select();
      return;
    }
    int i = table.selected().map(there::indexOf).orElse(-1);
    table.select(there.get((i + 1) % there.size()));
  }

  /** Charts the tooth under the pointer; dragging on belongs to the same edit. */
  private boolean chart(boolean further) {
    Optional<Aim> aim = sheet.aim(lastX, lastY).filter(Aim::inside);
    if (aim.isEmpty()) {
      return further;
    }
    List<Proposal> offers = offers(aim.get());
    if (!offers.isEmpty()) {
      table.apply(offers.get(0).name(), offers.get(0).next(), charted);
    }
    table.select(Subject.of(aim.get().tooth().orElseThrow()));
    return true;
  }

  private Optional<Note> noteUnder() {
    return table
        .selected()
        .flatMap(table::component)
        .filter(Note.class::isInstance)
        .map(Note.class::cast)
        .filter(
            n ->
                sheet
                    .aim(lastX, lastY)
                    .map(sheet::pick)
                    .map(s -> s.contains(table.selected().get()))
                    .orElse(false));
  }

  private Optional<Case> dragNote() {
    Note n = dragged.orElseThrow();
    Subject.OfComponent subject = (Subject.OfComponent) table.selected().orElseThrow();
    return sheet
        .place(subject.arch())
        .map(
            t -> {
              Point from = t.inverse().apply(sheet.camera().toSheet(downX, downY));
              Point to = t.inverse().apply(sheet.camera().toSheet(lastX, lastY));
              Component moved =
                  new Note(
                      n.id(),
                      n.text(),
                      clamped(n.x() + to.x() - from.x()),
                      clamped(n.y() + to.y() - from.y()),
                      n.pointsAtX(),
                      n.pointsAtY());
              Case next = table.current().with(subject.arch(), new DesignEdit.Change(moved));
              ghost.show(
                  new Proposal(Words.of("edit.move-note"), subject.arch(), next), "", lastX, lastY);
              return next;
            });
  }

  private static double clamped(double v) {
    return Math.max(-190, Math.min(190, v));
  }

  private void menu(MouseEvent e) {
    sheet
        .aim(lastX, lastY)
        .ifPresent(
            aim -> {
              List<Subject> there = sheet.pick(aim);
              if (!there.isEmpty()) {
                Subject s = table.selected().filter(there::contains).orElse(there.get(0));
                table.select(s);
                new SubjectMenu(table, there).show(sheet, e.getScreenX(), e.getScreenY());
              }
            });
  }

  private void scrolled(ScrollEvent e) {
    if (e.isShiftDown()) {
      sheet.pan(e.getDeltaX() + e.getDeltaY(), 0);
    } else if (e.getDeltaY() != 0) {
      sheet.zoom(e.getDeltaY() > 0 ? NOTCH : 1 / NOTCH, e.getX(), e.getY());
    }
    ghost.clear();
    e.consume();
  }

  private void typed(KeyEvent e) {
    if (e.getCode() == KeyCode.TAB && !e.isControlDown()) {
      Optional<Aim> aim = sheet.aim(lastX, lastY);
      int n = aim.map(this::offers).map(List::size).orElse(0);
      if (n > 1) {
        alternative = Math.floorMod(alternative + (e.isShiftDown() ? -1 : 1), n);
        hover();
        e.consume();
      }
    } else if (e.getCode() == KeyCode.ESCAPE) {
      ghost.clear();
      table.findingProperty().set(Optional.empty());
      table.select();
      e.consume();
    } else if (e.getCode() == KeyCode.ENTER) {
      click();
      e.consume();
    } else if (e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.RIGHT) {
      walk(e.getCode() == KeyCode.RIGHT ? 1 : -1);
      e.consume();
    } else if (e.getCode() == KeyCode.UP || e.getCode() == KeyCode.DOWN) {
      table
          .selected()
          .ifPresent(
              s ->
                  table.select(
                      Subject.of(
                          saddlewright.dentition.Tooth.at(
                              e.getCode() == KeyCode.UP
                                  ? saddlewright.dentition.Arch.UPPER
                                  : saddlewright.dentition.Arch.LOWER,
                              place(s)))));
      e.consume();
    }
  }

  /** Moves the selection along the arch by whole teeth. */
  private void walk(int by) {
    Subject from = table.selected().orElse(Subject.of(saddlewright.dentition.Tooth.T31));
    int place = Math.max(0, Math.min(15, place(from) + by));
    table.select(Subject.of(saddlewright.dentition.Tooth.at(from.arch(), place)));
    sheet.reveal(table.selectionProperty().get());
  }

  private int place(Subject s) {
    if (s instanceof Subject.OfTooth t) {
      return t.tooth().place();
    }
    return table
        .component(s)
        .flatMap(c -> c.teeth().stream().findFirst())
        .map(saddlewright.dentition.Tooth::place)
        .orElse(7);
  }
}
