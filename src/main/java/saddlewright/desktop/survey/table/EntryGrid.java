package saddlewright.desktop.survey.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.GridPane;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;

/**
 * The table itself: a column for each tooth, a row for each item, and the keys of a spreadsheet.
 */
final class EntryGrid extends ScrollPane {
  private final Worktable table;
  private final QuickEntry entry;
  private final Runnable changed;
  private final Consumer<String> trouble;
  private final GridPane grid = new GridPane();
  private final List<List<EntryCell>> cells = new ArrayList<>();
  private final List<Label> heads = new ArrayList<>();
  private final int[] gridRow;
  private Place here = new Place(0, 0);
  private Place anchor = here;
  private Optional<TextField> editor = Optional.empty();

  /**
   * A table for an arch.
   *
   * @param changed is told when another cell, or what stands in it, is looked at
   * @param trouble is told of what could not be done
   */
  EntryGrid(Worktable table, QuickEntry entry, Runnable changed, Consumer<String> trouble) {
    this.table = table;
    this.entry = entry;
    this.changed = changed;
    this.trouble = trouble;
    this.gridRow = new int[entry.rows()];
    setId("entry-" + entry.arch().code());
    getStyleClass().add("entry-scroll");
    grid.getStyleClass().add("entry-grid");
    grid.setFocusTraversable(true);
    grid.setAccessibleRole(AccessibleRole.TABLE_VIEW);
    grid.setId("entry-grid-" + entry.arch().code());
    setContent(grid);
    build();
    grid.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    grid.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    grid.addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    grid.addEventHandler(KeyEvent.KEY_TYPED, this::written);
    grid.focusedProperty().addListener(o -> mark());
    // The row of teeth and the column of items stay in sight while the rest is scrolled.
    vvalueProperty().addListener(o -> stick());
    hvalueProperty().addListener(o -> stick());
    viewportBoundsProperty().addListener(o -> stick());
    update();
  }

  private void build() {
    Label corner = head(Words.of("entry.corner"));
    corner.getStyleClass().add("entry-corner");
    corner.setViewOrder(-3);
    grid.add(corner, 0, 0);
    for (int c = 0; c < entry.columns(); c++) {
      Label h = head("");
      h.setViewOrder(-2);
      heads.add(h);
      grid.add(h, c + 1, 0);
    }
    int row = 1;
    int item = 0;
    for (Items.Group g : entry.groups()) {
      Label title = head(g.title());
      title.getStyleClass().add("entry-group");
      title.setViewOrder(-1);
      grid.add(title, 0, row++, entry.columns() + 1, 1);
      for (Item i : g.items()) {
        String unit = i.unit().isEmpty() ? "" : ", " + i.unit();
        Label name = head(i.title(entry.arch()) + unit);
        name.getStyleClass().add("entry-name");
        name.setViewOrder(-1);
        grid.add(name, 0, row);
        List<EntryCell> line = new ArrayList<>();
        for (int c = 0; c < entry.columns(); c++) {
          EntryCell cell = new EntryCell(new Place(item, c));
          line.add(cell);
          grid.add(cell, c + 1, row);
        }
        cells.add(line);
        gridRow[item++] = row++;
      }
    }
  }

  private static Label head(String text) {
    Label l = new Label(text);
    l.getStyleClass().add("entry-head");
    l.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    return l;
  }

  private void stick() {
    Bounds view = getViewportBounds();
    double x = Math.max(0, grid.getWidth() - view.getWidth()) * getHvalue();
    double y = Math.max(0, grid.getHeight() - view.getHeight()) * getVvalue();
    for (Node n : grid.getChildren()) {
      if (n instanceof EntryCell || n instanceof TextField) {
        continue;
      }
      Integer row = GridPane.getRowIndex(n);
      Integer column = GridPane.getColumnIndex(n);
      n.setTranslateX(column == 0 ? x : 0);
      n.setTranslateY(row == 0 ? y : 0);
    }
  }

  ArchChart chart() {
    return table.current().chart(entry.arch());
  }

  /** Shows what is charted now. */
  void update() {
    ArchChart chart = chart();
    for (int c = 0; c < entry.columns(); c++) {
      heads.get(c).setText(table.notationProperty().get().format(Tooth.at(entry.arch(), c)));
    }
    cells.forEach(line -> line.forEach(cell -> cell.show(entry, chart)));
    mark();
  }

  private void mark() {
    Block chosen = chosen();
    cells.forEach(
        line ->
            line.forEach(
                cell -> cell.choose(chosen.holds(cell.place()), cell.place().equals(here))));
    grid.setAccessibleText(cell(here).getAccessibleText());
    changed.run();
  }

  Place here() {
    return here;
  }

  Block chosen() {
    return Block.of(anchor, here);
  }

  private EntryCell cell(Place p) {
    return cells.get(p.row()).get(p.column());
  }

  void focus() {
    // Before its first frame the table is not yet in the window.
    applyCss();
    grid.requestFocus();
  }

  /** Goes to a cell, and brings it into view. */
  void go(Place to, boolean stretching) {
    here = to;
    if (!stretching) {
      anchor = to;
    }
    mark();
    bringIntoView(cell(to));
  }

  /** Goes to the column of a tooth. */
  void go(Tooth tooth) {
    go(new Place(here.row(), tooth.place()), false);
  }

  private void bringIntoView(Node cell) {
    Bounds view = getViewportBounds();
    Bounds b = cell.getBoundsInParent();
    double left = heads.get(0).getLayoutX();
    double top = gridRow.length == 0 ? 0 : heads.get(0).getHeight();
    scroll(true, b.getMinX(), b.getMaxX(), left, view.getWidth(), grid.getWidth());
    scroll(false, b.getMinY(), b.getMaxY(), top, view.getHeight(), grid.getHeight());
  }

  private void scroll(
      boolean across, double from, double to, double covered, double seen, double whole) {
    double hidden = whole - seen;
    if (hidden <= 0) {
      return;
    }
    double at = hidden * (across ? getHvalue() : getVvalue());
    double next = at;
    if (from - covered < at) {
      next = from - covered;
    } else if (to > at + seen) {
      next = to - seen;
    }
    double share = Math.max(0, Math.min(1, next / hidden));
    if (next != at) {
      if (across) {
        setHvalue(share);
      } else {
        setVvalue(share);
      }
    }
  }

  private void pressed(MouseEvent e) {
    if (e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Optional<EntryCell> cell = under(e);
    if (cell.isEmpty()) {
      return;
    }
    finish();
    grid.requestFocus();
    go(cell.get().place(), e.isShiftDown());
    if (e.getClickCount() == 2) {
      edit(Optional.empty());
    }
    e.consume();
  }

  private void dragged(MouseEvent e) {
    if (editor.isEmpty()) {
      under(e).ifPresent(c -> go(c.place(), true));
      e.consume();
    }
  }

  private Optional<EntryCell> under(MouseEvent e) {
    Point2D p = new Point2D(e.getSceneX(), e.getSceneY());
    return cells.stream()
        .flatMap(List::stream)
        .filter(c -> c.contains(c.sceneToLocal(p)))
        .findFirst();
  }

  private void typed(KeyEvent e) {
    if (e.isConsumed() || e.getTarget() != grid) {
      return;
    }
    boolean shift = e.isShiftDown();
    if (e.isShortcutDown()) {
      if (shortcut(e.getCode())) {
        e.consume();
      }
      return;
    }
    if (e.isAltDown()) {
      return;
    }
    switch (e.getCode()) {
      case LEFT, KP_LEFT -> step(0, -1, shift);
      case RIGHT, KP_RIGHT -> step(0, 1, shift);
      case UP, KP_UP -> step(-1, 0, shift);
      case DOWN, KP_DOWN -> step(1, 0, shift);
      case ENTER -> step(shift ? -1 : 1, 0, false);
      case TAB -> {
        if (!onwards(shift)) {
          return;
        }
      }
      case HOME -> go(new Place(here.row(), 0), shift);
      case END -> go(new Place(here.row(), entry.columns() - 1), shift);
      case PAGE_UP -> step(-8, 0, shift);
      case PAGE_DOWN -> step(8, 0, shift);
      case F2 -> edit(Optional.empty());
      case DELETE, BACK_SPACE -> clear();
      case ESCAPE -> {
        if (!giveUp()) {
          return;
        }
      }
      default -> {
        return;
      }
    }
    e.consume();
  }

  private boolean shortcut(KeyCode code) {
    switch (code) {
      case C -> copy();
      case X -> {
        copy();
        clear();
      }
      case V -> paste();
      case R -> put(entry.filled(chart(), chosen(), false));
      case D -> put(entry.filled(chart(), chosen(), true));
      case A -> {
        anchor = new Place(0, 0);
        here = new Place(entry.rows() - 1, entry.columns() - 1);
        mark();
      }
      case HOME -> go(new Place(0, 0), false);
      case END -> go(new Place(entry.rows() - 1, entry.columns() - 1), false);
      default -> {
        return false;
      }
    }
    return true;
  }

  private void step(int rows, int columns, boolean stretching) {
    int r = Math.max(0, Math.min(entry.rows() - 1, here.row() + rows));
    int c = Math.max(0, Math.min(entry.columns() - 1, here.column() + columns));
    go(new Place(r, c), stretching);
  }

  /**
   * To the next cell, at the end of a row to the next row; from the corners on out of the table.
   */
  private boolean onwards(boolean back) {
    int n = here.row() * entry.columns() + here.column() + (back ? -1 : 1);
    if (n < 0 || n >= entry.rows() * entry.columns()) {
      return false;
    }
    go(new Place(n / entry.columns(), n % entry.columns()), false);
    return true;
  }

  private void written(KeyEvent e) {
    String c = e.getCharacter();
    if (e.getTarget() != grid
        || e.isControlDown()
        || e.isMetaDown()
        || e.isAltDown()
        || c.isEmpty()
        || c.charAt(0) < ' '
        || c.charAt(0) == 127) {
      return;
    }
    edit(Optional.of(c));
    e.consume();
  }

  /** Opens the cell: with what stands in it, or with what was typed in its place. */
  private void edit(Optional<String> typed) {
    finish();
    EntryCell cell = cell(here);
    anchor = here;
    TextField field = new TextField(typed.orElseGet(() -> entry.text(chart(), here)));
    field.getStyleClass().add("entry-editor");
    field.setId("entry-editor");
    field.setAccessibleText(cell.getAccessibleText());
    field.setMinWidth(0);
    field.setPrefWidth(cell.getWidth());
    field.setViewOrder(-1);
    grid.add(field, here.column() + 1, gridRow[here.row()]);
    editor = Optional.of(field);
    field.addEventFilter(KeyEvent.KEY_PRESSED, e -> inEditor(e, typed.isPresent()));
    // Without its skin it would lose what is typed before the next frame.
    field.applyCss();
    field.requestFocus();
    if (typed.isPresent()) {
      field.end();
      field.deselect();
    } else {
      field.selectAll();
    }
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                finish();
              }
            });
    mark();
  }

  private void inEditor(KeyEvent e, boolean fresh) {
    boolean shift = e.isShiftDown();
    switch (e.getCode()) {
      case ESCAPE -> leave();
      case ENTER -> {
        finish();
        step(shift ? -1 : 1, 0, false);
      }
      case TAB -> {
        finish();
        onwards(shift);
      }
      case UP -> {
        finish();
        step(-1, 0, false);
      }
      case DOWN -> {
        finish();
        step(1, 0, false);
      }
      case LEFT, RIGHT -> {
        if (!fresh || e.isShortcutDown() || shift) {
          return;
        }
        boolean left = e.getCode() == KeyCode.LEFT;
        finish();
        step(0, left ? -1 : 1, false);
      }
      default -> {
        return;
      }
    }
    e.consume();
  }

  /** Closes the cell without what was typed. */
  private void leave() {
    editor.ifPresent(
        f -> {
          editor = Optional.empty();
          grid.getChildren().remove(f);
          grid.requestFocus();
          mark();
        });
  }

  /** Enters what was typed. */
  void finish() {
    editor.ifPresent(
        f -> {
          leave();
          SortedMap<Place, String> one = new TreeMap<>();
          one.put(here, f.getText());
          put(one);
        });
  }

  private void clear() {
    SortedMap<Place, String> none = new TreeMap<>();
    chosen().places().forEach(p -> none.put(p, ""));
    put(none);
  }

  private boolean giveUp() {
    boolean any = false;
    for (Place p : chosen().places()) {
      any |= entry.giveUp(p);
    }
    if (any) {
      update();
    }
    return any;
  }

  private void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putString(Tabbed.write(entry.texts(chart(), chosen())));
    Clipboard.getSystemClipboard().setContent(content);
  }

  private void paste() {
    String text = Clipboard.getSystemClipboard().getString();
    if (text != null && !text.isEmpty()) {
      paste(Tabbed.read(text));
    }
  }

  void paste(List<List<String>> rows) {
    boolean fits = entry.fits(rows, chosen());
    SortedMap<Place, String> laid = entry.laid(rows, chosen());
    anchor = laid.firstKey();
    here = laid.lastKey();
    put(laid);
    if (!fits) {
      trouble.accept(Words.of("entry.does-not-fit"));
    }
  }

  /** Enters texts; all of them are taken back together. */
  private void put(SortedMap<Place, String> texts) {
    if (texts.isEmpty()) {
      return;
    }
    ArchChart next = entry.enter(chart(), texts);
    table.apply(entry.name(next, texts), table.current().with(next));
    update();
  }
}
