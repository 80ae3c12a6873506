package saddlewright.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Window;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.rules.Finding;

/**
 * A hand that makes random gestures in a window, the same for the same seed. It works on the thread
 * of the window, several gestures between two frames, and needs no pointer.
 */
final class RandomHand {
  private static final List<KeyCode> KEYS =
      List.of(
          KeyCode.TAB,
          KeyCode.ESCAPE,
          KeyCode.ENTER,
          KeyCode.LEFT,
          KeyCode.RIGHT,
          KeyCode.UP,
          KeyCode.DOWN,
          KeyCode.HOME,
          KeyCode.END,
          KeyCode.DIGIT3,
          KeyCode.DIGIT5);

  /** What the menus do to a case, by the keys of their words. */
  private static final Set<String> EDITS =
      plain("menu.delete", "menu.mirror", "menu.mirror-unit", "menu.mirror-right")
          .collect(Collectors.toSet());

  private static final Set<String> RARE =
      plain("menu.mirror-left", "edit.clear-upper", "edit.clear-lower", "view.mono")
          .collect(Collectors.toSet());

  private static final List<String> TEXTS =
      List.of("", "3", "0.25", "1,5", "12", "99", "-1", "x", "Ÿ 山 \"'<&", "7.12345678");

  private interface Deed {
    String go();
  }

  /** A kind of gesture; some are made in panels that must have caught up with the case. */
  private record Kind(int weight, boolean inPanels, Deed deed) {}

  private final OnStage w;
  private final Random random;
  private final SheetPane sheet;
  private final ToolBox tools;
  private final List<Kind> kinds = new ArrayList<>();
  private volatile String last = "";
  private int weights;
  private Optional<Kind> pending = Optional.empty();

  RandomHand(OnStage w, long seed) throws Exception {
    this.w = w;
    this.random = new Random(seed);
    this.sheet = w.window.sheet();
    this.tools = OnStage.run(() -> new ToolBox(w.table().stepProperty()));
    kind(8, this::step);
    kind(14, this::tool);
    kind(30, this::click);
    kind(8, this::drag);
    kind(6, this::body);
    kind(8, this::handle);
    kind(6, this::nudge);
    kind(10, this::key);
    kind(8, this::menu);
    panel(6, this::context);
    panel(10, this::attribute);
    panel(5, this::remedy);
    panel(4, this::waive);
    kind(12, this::history);
    kind(3, this::view);
  }

  private static java.util.stream.Stream<String> plain(String... keys) {
    return java.util.Arrays.stream(keys).map(k -> Words.of(k).replace("_", ""));
  }

  private void kind(int weight, Deed deed) {
    kinds.add(new Kind(weight, false, deed));
    weights += weight;
  }

  private void panel(int weight, Deed deed) {
    kinds.add(new Kind(weight, true, deed));
    weights += weight;
  }

  /** Makes some gestures before the next frame; says which. */
  List<String> gestures() {
    List<String> told = new ArrayList<>();
    int most = 1 + random.nextInt(6);
    while (told.size() < most) {
      Kind next = pending.orElseGet(this::choose);
      if (next.inPanels() && !told.isEmpty()) {
        pending = Optional.of(next);
        break;
      }
      pending = Optional.empty();
      last = "";
      told.add(next.deed().go());
      closeOthers();
    }
    return told;
  }

  /** What of the gesture under way is known. */
  String last() {
    return last;
  }

  private Kind choose() {
    int at = random.nextInt(weights);
    for (Kind k : kinds) {
      at -= k.weight();
      if (at < 0) {
        return k;
      }
    }
    throw new AssertionError();
  }

  /** Lets go of all that is held, and leaves all fields. */
  void rest() {
    sheet.requestFocus();
    closeOthers();
  }

  private void closeOthers() {
    for (Window other : List.copyOf(Window.getWindows())) {
      if (other != scene().getWindow()) {
        other.hide();
      }
    }
  }

  private Worktable table() {
    return w.table();
  }

  private Scene scene() {
    return w.window.stage().getScene();
  }

  private <T> Optional<T> any(List<T> of) {
    return of.isEmpty() ? Optional.empty() : Optional.of(of.get(random.nextInt(of.size())));
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private String step() {
    Step s = any(List.of(Step.values())).orElseThrow();
    press("#step-" + s.name());
    return "step " + s;
  }

  private void press(String selector) {
    if (scene().lookup(selector) instanceof ButtonBase b && !b.isDisabled()) {
      b.fire();
    }
  }

  private String tool() {
    Optional<ToolChoice> c = any(tools.of(table().stepProperty().get()));
    c.ifPresent(x -> press("#tool-" + x.id().replace('.', '-')));
    return "tool " + c.map(ToolChoice::id).orElse("none");
  }

  private Tooth tooth() {
    boolean upper =
        switch (table().shownProperty().get()) {
          case UPPER -> true;
          case LOWER -> false;
          case BOTH -> random.nextBoolean();
        };
    return Tooth.at(upper ? Arch.UPPER : Arch.LOWER, random.nextInt(16));
  }

  private Optional<Point> on(Tooth t, double mesial, double buccal) {
    PlacedTooth p = table().assessment().arch(t.arch()).form().tooth(t);
    return sheet.toPane(t.arch(), p.at(mesial, buccal));
  }

  private double around() {
    return random.nextDouble() * 2.8 - 1.4;
  }

  private String click() {
    Tooth t = tooth();
    double m = around();
    double b = around();
    boolean alt = one(4);
    boolean shift = one(10);
    last = "click " + t + " " + m + " " + b + " Alt " + alt + " Shift " + shift;
    Optional<Point> p = on(t, m, b);
    p.ifPresent(
        at -> {
          mouse(sheet, MouseEvent.MOUSE_MOVED, at, alt, shift);
          if (one(3)) {
            key(sheet, KeyCode.TAB, one(3));
          }
          mouse(sheet, MouseEvent.MOUSE_PRESSED, at, alt, shift);
          mouse(sheet, MouseEvent.MOUSE_RELEASED, at, alt, shift);
        });
    return "click " + t + " " + m + " " + b + (alt ? " Alt" : "") + (shift ? " Shift" : "");
  }

  private String drag() {
    Tooth t = tooth();
    boolean alt = one(3);
    int length = 1 + random.nextInt(5);
    int way = random.nextBoolean() ? 1 : -1;
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < length; i++) {
      int place = Math.max(0, Math.min(15, t.place() + way * i));
      on(Tooth.at(t.arch(), place), 0, 0).ifPresent(at::add);
    }
    drag(sheet, at, alt);
    return "drag from " + t + " over " + length + (alt ? " Alt" : "");
  }

  private void drag(Node on, List<Point> at, boolean alt) {
    if (at.isEmpty()) {
      return;
    }
    mouse(on, MouseEvent.MOUSE_MOVED, at.get(0), alt, false);
    mouse(on, MouseEvent.MOUSE_PRESSED, at.get(0), alt, false);
    at.forEach(p -> mouse(on, MouseEvent.MOUSE_DRAGGED, p, alt, false));
    if (one(8)) {
      key(on, KeyCode.ESCAPE, false);
    }
    mouse(on, MouseEvent.MOUSE_RELEASED, at.get(at.size() - 1), alt, false);
  }

  /** Selects a component and drags it by its body on to a tooth. */
  private String body() {
    Tooth to = tooth();
    Optional<Laid> laid =
        any(
            table().assessment().arch(to.arch()).layout().all().stream()
                .filter(l -> !l.body().isEmpty())
                .toList());
    if (laid.isEmpty()) {
      return "no body";
    }
    table().select(Subject.of(to.arch(), laid.get().component()));
    List<Point> at = new ArrayList<>();
    sheet.toPane(to.arch(), laid.get().body().innerPoint()).ifPresent(at::add);
    on(to, around(), around()).ifPresent(at::add);
    if (at.size() == 2) {
      at.add(1, at.get(0).towards(at.get(1), 0.5));
      drag(sheet, at, one(5));
    }
    return "body of " + laid.get().component().id() + " to " + to;
  }

  private Optional<Node> grip() {
    if (one(2)) {
      Arch arch = tooth().arch();
      any(table().current().design(arch).components())
          .ifPresent(c -> table().select(Subject.of(arch, c)));
    }
    return any(
        scene().lookup("#handles").lookupAll(".grip").stream().filter(Node::isVisible).toList());
  }

  private String handle() {
    Optional<Node> grip = grip();
    if (grip.isEmpty()) {
      return "no handle";
    }
    Bounds b = grip.get().getBoundsInParent();
    Point at = new Point(b.getCenterX(), b.getCenterY());
    List<Point> way = new ArrayList<>();
    way.add(at);
    for (int i = 0; i < 3; i++) {
      at = new Point(at.x() + random.nextGaussian() * 25, at.y() + random.nextGaussian() * 25);
      way.add(at);
    }
    String id = grip.get().getId();
    drag(grip.get(), way, one(3));
    return id + " dragged";
  }

  private String nudge() {
    Optional<Node> grip = grip();
    KeyCode code = KEYS.get(3 + random.nextInt(4));
    grip.ifPresent(
        g -> {
          g.requestFocus();
          for (int i = random.nextInt(4); i >= 0; i--) {
            key(g, code, one(3));
          }
        });
    return grip.map(Node::getId).orElse("no handle") + " " + code;
  }

  private String key() {
    KeyCode code = any(KEYS).orElseThrow();
    boolean shift = one(3);
    boolean alt = code == KeyCode.ENTER && one(2);
    Event.fireEvent(
        sheet, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, alt, false));
    Event.fireEvent(
        sheet, new KeyEvent(KeyEvent.KEY_RELEASED, "", "", code, shift, false, alt, false));
    return "key " + code + (shift ? " Shift" : "") + (alt ? " Alt" : "");
  }

  private static void key(Node on, KeyCode code, boolean shift) {
    Event.fireEvent(
        on, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
  }

  private String menu() {
    Set<String> wanted = one(10) ? RARE : EDITS;
    Optional<Action> a =
        any(
            Actions.of(w.window.menus()).stream()
                .filter(x -> x.ready() && wanted.contains(x.name()))
                .toList());
    a.ifPresent(Action::run);
    return "menu " + a.map(Action::name).orElse("none");
  }

  /** Opens what a click with the other button would open, and chooses something in it. */
  private String context() {
    Tooth t = tooth();
    Optional<Point> p = on(t, around(), around());
    List<Subject> there =
        p.flatMap(at -> sheet.aim(at.x(), at.y())).map(sheet::pick).orElse(List.of());
    if (there.isEmpty()) {
      return "nothing there";
    }
    List<MenuItem> items = new ArrayList<>();
    collect(sheet.menu(there).getItems(), items);
    Optional<MenuItem> item = any(items);
    item.ifPresent(MenuItem::fire);
    return "menu of " + there.get(0).key() + ": " + item.map(MenuItem::getText).orElse("none");
  }

  private static void collect(List<MenuItem> from, List<MenuItem> into) {
    for (MenuItem i : from) {
      if (i instanceof Menu m) {
        collect(m.getItems(), into);
      } else if (!i.isDisable() && i.getOnAction() != null) {
        into.add(i);
      }
    }
  }

  /** Sets something in the panel of what is selected. */
  private String attribute() {
    List<Node> fields =
        scene().lookup("#subject").lookupAll("*").stream()
            .filter(n -> n.getId() != null && !n.isDisabled())
            .filter(
                n ->
                    n instanceof ComboBox<?>
                        || n instanceof TextInputControl
                        || n instanceof CheckBox)
            .toList();
    Optional<Node> field = any(fields);
    if (field.isEmpty()) {
      return "no field";
    }
    Node n = field.get();
    if (n instanceof ComboBox<?> box && !box.getItems().isEmpty()) {
      box.getSelectionModel().select(random.nextInt(box.getItems().size()));
    } else if (n instanceof CheckBox box) {
      box.fire();
    } else if (n instanceof TextInputControl text) {
      text.requestFocus();
      text.setText(any(TEXTS).orElseThrow());
      if (text instanceof TextField line && line.getOnAction() != null && one(2)) {
        line.getOnAction().handle(null);
      } else {
        sheet.requestFocus();
      }
    }
    return "field " + n.getId();
  }

  private Optional<Finding> finding() {
    return any(table().assessment().report().standing());
  }

  private String remedy() {
    Optional<Finding> f = finding();
    f.ifPresent(table()::look);
    Node pane = scene().lookup("#findings");
    Optional<Node> button = any(List.copyOf(pane.lookupAll(".remedy")));
    if (button.isPresent() && button.get() instanceof ButtonBase b && !b.isDisabled()) {
      b.fire();
      return "remedy " + b.getText();
    }
    f.flatMap(x -> any(x.remedies())).ifPresent(table()::take);
    return "remedy of " + f.map(Finding::key).orElse("none");
  }

  private String waive() {
    finding().ifPresent(table()::look);
    Node pane = scene().lookup("#findings");
    Optional<Node> take = any(List.copyOf(pane.lookupAll(".withdraw")));
    if (take.isPresent() && one(2)) {
      ((ButtonBase) take.get()).fire();
      return "waiver withdrawn";
    }
    if (pane.lookup("#waiver-reason") instanceof TextField reason) {
      reason.setText("Agreed " + random.nextInt(9));
      press("#waive");
      return "waived";
    }
    return "nothing to waive";
  }

  private String history() {
    int edits = table().editsProperty().get().size();
    switch (random.nextInt(4)) {
      case 0, 1 -> table().undo();
      case 2 -> table().redo();
      default -> table().goTo(Math.max(0, edits - random.nextInt(4)));
    }
    return "history at " + table().standingProperty().get() + " of " + edits;
  }

  private String view() {
    switch (random.nextInt(5)) {
      case 0 -> table().notationProperty().set(any(List.of(Notation.values())).orElseThrow());
      case 1 -> table().numbersProperty().set(random.nextBoolean());
      case 2 -> sheet.zoom(0.7 + random.nextDouble() * 0.7);
      case 3 -> sheet.fit();
      default -> press("#show-" + any(List.of(Worktable.Shown.values())).orElseThrow());
    }
    return "another view";
  }

  private void mouse(Node on, EventType<MouseEvent> type, Point p, boolean alt, boolean shift) {
    Point2D in = sheet.localToScene(p.x(), p.y());
    Point2D screen = sheet.localToScreen(p.x(), p.y());
    boolean moved = type == MouseEvent.MOUSE_MOVED;
    boolean down = !moved && type != MouseEvent.MOUSE_RELEASED;
    Event.fireEvent(
        on,
        new MouseEvent(
            type,
            in.getX(),
            in.getY(),
            screen.getX(),
            screen.getY(),
            moved ? MouseButton.NONE : MouseButton.PRIMARY,
            moved ? 0 : 1,
            shift,
            false,
            alt,
            false,
            down,
            false,
            false,
            false,
            false,
            true,
            null));
  }
}
