package saddlewright.desktop.sheet;

import java.util.List;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Subject;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.Offers.Offer;
import saddlewright.desktop.subject.Spoken;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Refusal;
import saddlewright.desktop.tools.Sites;
import saddlewright.desktop.tools.Tool;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.geometry.Point;

/** Walks over the teeth and their sites with the keys, showing at each what Enter would place. */
final class Walking {
  private static final Duration AFTER_THE_SHEET = Duration.millis(40);

  /** A site lies in a direction when it lies at most so much farther across it than along it. */
  private static final double ASIDE = 2.5;

  /** The pointer is not meant before it has moved farther, pixels. */
  private static final double TREMBLE = 4;

  private final SheetPane sheet;
  private final Worktable table;
  private final Offers offers;
  private final Ghost ghost;
  private final SiteCursor cursor;
  private final Press press;
  private final PauseTransition pause = new PauseTransition(AFTER_THE_SHEET);
  private Optional<Tooth> at = Optional.empty();
  private Optional<Tooth> to = Optional.empty();
  private String site = "";
  private boolean shown;
  private boolean acting;
  private boolean spaceDown;
  private double restX;
  private double restY;

  Walking(SheetPane sheet, Worktable table, ToolBox tools, Ghost ghost, SiteCursor cursor) {
    this.sheet = sheet;
    this.table = table;
    this.offers = new Offers(table, tools);
    this.ghost = ghost;
    this.cursor = cursor;
    this.press = new Press(sheet, table);
    sheet.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    sheet.addEventHandler(KeyEvent.KEY_RELEASED, this::released);
    sheet.addEventFilter(MouseEvent.MOUSE_MOVED, this::moved);
    sheet.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> leave());
    sheet
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                leave();
              }
            });
    pause.setOnFinished(e -> refresh());
    InvalidationListener later = o -> pause.playFromStart();
    table.assessmentProperty().addListener(later);
    table.selectionProperty().addListener(later);
    table.selectionProperty().addListener(o -> strayed());
    table.notationProperty().addListener(later);
    sheet.camera().scaleProperty().addListener(later);
    tools
        .inHandProperty()
        .addListener(
            o -> {
              offers.begin();
              to = Optional.empty();
              pause.playFromStart();
            });
  }

  /** Whether the keys act at a site that is marked on the sheet. */
  boolean isShown() {
    return shown;
  }

  /** Takes the mark away; where one was is remembered. */
  private void leave() {
    spaceDown = false;
    if (shown) {
      shown = false;
      to = Optional.empty();
      cursor.leave();
      ghost.clear();
      tell();
    }
  }

  /** A hand that only rests on the pointer does not mean it. */
  private void moved(MouseEvent e) {
    if (Math.hypot(e.getX() - restX, e.getY() - restY) > TREMBLE) {
      restX = e.getX();
      restY = e.getY();
      leave();
    }
  }

  /** When something elsewhere is selected by other means, one is no longer where one was. */
  private void strayed() {
    if (!acting && shown && !table.selected().flatMap(table::toothOf).equals(at)) {
      leave();
    }
  }

  private void refresh() {
    if (sheet.getScene() == null) {
      return;
    }
    if (shown) {
      show();
    } else {
      tell();
    }
  }

  private void pressed(KeyEvent e) {
    if (e.getTarget() != sheet || !table.openProperty().get()) {
      return;
    }
    if (e.isShortcutDown() || e.isMetaDown() || e.isControlDown()) {
      return;
    }
    if (act(e)) {
      e.consume();
    }
  }

  /** Does what a key means; false when it means nothing here. */
  private boolean act(KeyEvent e) {
    KeyCode code = e.getCode();
    boolean shift = e.isShiftDown();
    if (e.isAltDown() && code != KeyCode.ENTER) {
      return false;
    }
    switch (code) {
      case LEFT, KP_LEFT -> go(-1, 0, shift);
      case RIGHT, KP_RIGHT -> go(1, 0, shift);
      case UP, KP_UP -> go(0, -1, shift);
      case DOWN, KP_DOWN -> go(0, 1, shift);
      case HOME -> stand(Tooth.at(arch(), 0));
      case END -> stand(Tooth.at(arch(), 15));
      case ENTER -> enter(e.isAltDown());
      case SPACE -> spaceDown = true;
      case CONTEXT_MENU -> menu();
      case F10 -> {
        if (!shift) {
          return false;
        }
        menu();
      }
      case TAB -> {
        return shown && turn(shift ? -1 : 1);
      }
      case ESCAPE -> {
        boolean marked = shown;
        leave();
        return marked;
      }
      default -> {
        return !shift && step(code);
      }
    }
    return true;
  }

  /** A digit chooses a step of the work, 0 the tenth. */
  private boolean step(KeyCode code) {
    if (!code.isDigitKey()) {
      return false;
    }
    int digit = Integer.parseInt(code.getName().replaceAll("\\D", ""));
    table.stepProperty().set(Step.values()[(digit + 9) % 10]);
    return true;
  }

  /** Space opens the menu when it is let go: held, it lets the pointer move the page. */
  private void released(KeyEvent e) {
    if (e.getCode() == KeyCode.SPACE && e.getTarget() == sheet && spaceDown) {
      spaceDown = false;
      menu();
      e.consume();
    }
  }

  private void menu() {
    if (table.selected().isEmpty()) {
      stand(start());
    }
    sheet.openMenu();
  }

  private Arch arch() {
    return here().map(Tooth::arch).orElseGet(() -> start().arch());
  }

  /** Where one is: where one walked to, otherwise at what is selected. */
  private Optional<Tooth> here() {
    return shown && at.isPresent() ? at : table.selected().flatMap(table::toothOf);
  }

  private Tooth start() {
    return table.shownProperty().get().shows(Arch.UPPER) ? Tooth.T11 : Tooth.T41;
  }

  /** Walks one tooth, or with Shift one site, or over one more place, in a direction on screen. */
  private void go(int dx, int dy, boolean within) {
    Optional<Tooth> here = here();
    if (here.isEmpty()) {
      stand(start());
    } else if (within) {
      within(here.get(), dx, dy);
    } else if (dy != 0) {
      Arch other = dy < 0 ? Arch.UPPER : Arch.LOWER;
      stand(
          table.shownProperty().get().shows(other)
              ? Tooth.at(other, here.get().place())
              : here.get());
    } else {
      stand(next(here.get(), dx));
    }
  }

  private static Tooth next(Tooth from, int by) {
    return Tooth.at(from.arch(), Math.max(0, Math.min(15, from.place() + by)));
  }

  private void stand(Tooth tooth) {
    at = Optional.of(tooth);
    to = Optional.empty();
    offers.begin();
    acting = true;
    table.select(Subject.of(tooth));
    acting = false;
    sheet.reveal(table.selectionProperty().get());
    show();
  }

  private void within(Tooth here, int dx, int dy) {
    if (!shown) {
      stand(here);
      return;
    }
    Optional<Aim> from = site().map(Sites.Site::aim);
    boolean stretched =
        dx != 0
            && from.isPresent()
            && offers.tool().filter(t -> t.isStretched(from.get(), table.assessment())).isPresent();
    if (stretched) {
      to = Optional.of(next(to.orElse(here), dx));
    } else {
      neighbour(here, dx, dy).ifPresent(s -> site = s.name());
      offers.begin();
    }
    show();
  }

  /** The nearest of the other sites that lies in a direction on screen. */
  private Optional<Sites.Site> neighbour(Tooth tooth, int dx, int dy) {
    Optional<Sites.Site> from = site();
    Optional<Point> p = from.flatMap(this::place);
    if (p.isEmpty()) {
      return Optional.empty();
    }
    Sites.Site best = null;
    double least = Double.MAX_VALUE;
    for (Sites.Site s : sites(tooth)) {
      Optional<Point> q = place(s);
      if (s.name().equals(from.get().name()) || q.isEmpty()) {
        continue;
      }
      double x = q.get().x() - p.get().x();
      double y = q.get().y() - p.get().y();
      double along = x * dx + y * dy;
      double across = Math.abs(x * dy) + Math.abs(y * dx);
      double far = along + across;
      if (along > 0 && across <= ASIDE * along && far < least) {
        best = s;
        least = far;
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<Point> place(Sites.Site s) {
    return sheet.toPane(s.aim().arch(), s.aim().point());
  }

  private List<Sites.Site> sites(Tooth tooth) {
    if (table.stageProperty().get().isPresent()) {
      // A stage is looked at: what is placed on it would be placed on the whole design.
      return List.of();
    }
    return offers
        .tool()
        .map(Tool::sites)
        .orElse(Sites.TOOTH)
        .on(table.assessment().arch(tooth.arch()).form(), tooth);
  }

  /** The site where one is: on another tooth the one of the same name, if it has it. */
  private Optional<Sites.Site> site() {
    List<Sites.Site> all = at.map(this::sites).orElse(List.of());
    return all.stream()
        .filter(s -> s.name().equals(site))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private Optional<Offer> offer(Aim aim, boolean bothSides) {
    return to.filter(t -> !t.equals(at.orElseThrow()))
        .map(
            t ->
                offers.stretched(
                    aim,
                    Sites.TOOTH.on(table.assessment().arch(t.arch()).form(), t).stream()
                        .findFirst()
                        .map(Sites.Site::aim)
                        .orElse(aim),
                    bothSides))
        .orElseGet(() -> offers.at(aim, bothSides));
  }

  private void enter(boolean bothSides) {
    Optional<Tooth> here = here();
    if (here.isEmpty() || !shown) {
      stand(here.orElseGet(this::start));
      return;
    }
    Optional<Aim> aim = site().map(Sites.Site::aim);
    if (aim.isEmpty()) {
      return;
    }
    acting = true;
    Optional<Offer> stretched = to.isPresent() ? offer(aim.get(), bothSides) : Optional.empty();
    if (stretched.isPresent()) {
      press.place(stretched.get().proposal(), aim.get());
    } else {
      press.at(aim.get(), offers, bothSides);
    }
    acting = false;
    to = Optional.empty();
    show();
  }

  private boolean turn(int by) {
    boolean turned = to.isEmpty() && site().filter(s -> offers.turn(s.aim(), by)).isPresent();
    if (turned) {
      show();
    }
    return turned;
  }

  /** Marks the site, and shows there what Enter would place, or says why it would place nothing. */
  private void show() {
    pause.stop();
    shown = true;
    Optional<Sites.Site> here = site();
    Optional<Point> p = here.flatMap(this::place);
    if (p.isEmpty()) {
      cursor.leave();
      ghost.clear();
      tell();
      return;
    }
    cursor.standAt(p.get());
    Aim aim = here.get().aim();
    Optional<Offer> offer = offer(aim, false);
    Optional<Refusal> refusal = offer.isPresent() ? Optional.empty() : offers.refusal(aim);
    if (offer.isPresent()) {
      ghost.show(offer.get().proposal(), offer.get().more(), p.get().x(), p.get().y());
    } else if (refusal.isPresent()) {
      ghost.refuse(refusal.get().words(), p.get().x(), p.get().y());
    } else {
      ghost.clear();
    }
    tell();
  }

  /** Says what is selected and, where one walks, what Enter would do. */
  private void tell() {
    Notation notation = table.notationProperty().get();
    Spoken spoken = Spoken.of(table.assessment(), notation);
    String words =
        table.selected().map(spoken::of).map(Words::capital).orElse(Words.of("sheet.accessible"));
    if (shown && at.isPresent()) {
      String where = site().map(Sites.Site::name).filter(n -> !n.isEmpty()).orElse("");
      String there = where.isEmpty() ? ToothNames.full(at.get()) : where;
      String says = ghost.words();
      words = Words.of("sheet.at", words, there, says.isEmpty() ? Words.of("sheet.nothing") : says);
    }
    if (!words.equals(sheet.getAccessibleText())) {
      sheet.setAccessibleText(words);
    }
  }
}
