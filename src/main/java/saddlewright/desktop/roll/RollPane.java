package saddlewright.desktop.roll;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.collections.ListChangeListener;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import saddlewright.design.Subject;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.SheetPane;

/** The list of teeth and components: each line says in words what the sheet shows there. */
public final class RollPane extends VBox {
  private static final Duration AFTER_THE_SHEET = Duration.millis(40);

  private final Worktable table;
  private final SheetPane sheet;
  private final TreeView<Row> tree = new TreeView<>(new TreeItem<>());
  private final ComboBox<Filter> filter = new ComboBox<>();
  private final Label foot = new Label();
  private final Map<Row, TreeItem<Row>> items = new HashMap<>();
  private final Typed typed = new Typed();
  private final PauseTransition pause = new PauseTransition(AFTER_THE_SHEET);
  private RowWords words;
  private boolean following;

  public RollPane(Worktable table, SheetPane sheet) {
    this.table = table;
    this.sheet = sheet;
    this.words = new RowWords(table.assessment(), table.notationProperty().get());
    getStyleClass().addAll("panel", "roll");
    setId("roll");
    Label title = new Label(Words.of("roll.title"));
    title.getStyleClass().add("panel-title");
    foot.getStyleClass().add("soft");
    foot.setId("roll-foot");
    foot.setWrapText(true);
    foot.setText(Words.of("roll.hint"));
    VBox.setVgrow(tree, Priority.ALWAYS);
    getChildren().addAll(title, filters(), tree, foot);
    tree.setId("roll-tree");
    tree.setShowRoot(false);
    tree.setAccessibleText(Words.of("roll.accessible"));
    tree.setCellFactory(t -> new RowCell(() -> words));
    tree.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    tree.getSelectionModel()
        .getSelectedItems()
        .addListener((ListChangeListener<TreeItem<Row>>) c -> chosen());
    tree.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    tree.addEventFilter(KeyEvent.KEY_TYPED, this::type);
    tree.setOnContextMenuRequested(this::menu);
    pause.setOnFinished(e -> rebuild());
    InvalidationListener later =
        o -> {
          if (getScene() != null) {
            pause.playFromStart();
          }
        };
    table.assessmentProperty().addListener(later);
    table.notationProperty().addListener(later);
    table.selectionProperty().addListener(o -> follow());
    sceneProperty().addListener((o, was, is) -> later.invalidated(o));
    rebuild();
  }

  private Node filters() {
    filter.setId("roll-filter");
    filter.getItems().setAll(Filter.values());
    filter.setConverter(new InWords<>(f -> Words.of("roll.filter." + f)));
    filter.setValue(Filter.ALL);
    filter.setMaxWidth(Double.MAX_VALUE);
    filter.setOnAction(e -> rebuild());
    filter.setAccessibleText(Words.of("roll.show"));
    HBox.setHgrow(filter, Priority.ALWAYS);
    Label name = new Label(Words.of("roll.show"));
    name.setMinWidth(USE_PREF_SIZE);
    name.setLabelFor(filter);
    HBox line = new HBox(8, name, filter);
    line.setAlignment(Pos.CENTER_LEFT);
    line.getStyleClass().add("roll-filter");
    return line;
  }

  /** Whether it shows the case as it is now; shortly after a change it still has to. */
  public boolean isSettled() {
    return pause.getStatus() != Animation.Status.RUNNING;
  }

  @Override
  public void requestFocus() {
    tree.requestFocus();
  }

  private void rebuild() {
    words = new RowWords(table.assessment(), table.notationProperty().get());
    following = true;
    Map<Row, TreeItem<Row>> before = new HashMap<>(items);
    items.clear();
    fill(tree.getRoot(), Branch.of(table.assessment(), filter.getValue()), before);
    following = false;
    boolean empty = tree.getRoot().getChildren().stream().allMatch(TreeItem::isLeaf);
    foot.setText(Words.of(empty ? "roll.empty" : "roll.hint"));
    tree.refresh();
    follow();
  }

  /** Keeps the items of lines that stay, so that they stay unfolded and chosen as they are. */
  private void fill(TreeItem<Row> item, List<Branch> below, Map<Row, TreeItem<Row>> before) {
    List<TreeItem<Row>> next = new ArrayList<>();
    for (Branch b : below) {
      TreeItem<Row> child =
          before.computeIfAbsent(
              b.row(),
              r -> {
                TreeItem<Row> fresh = new TreeItem<>(r);
                fresh.setExpanded(true);
                fresh.expandedProperty().addListener(o -> tree.refresh());
                return fresh;
              });
      items.put(b.row(), child);
      fill(child, b.below(), before);
      next.add(child);
    }
    if (!item.getChildren().equals(next)) {
      item.getChildren().setAll(next);
    }
  }

  /** Selects on the sheet what is chosen in the list. */
  private void chosen() {
    if (following) {
      return;
    }
    Set<Subject> subjects = new LinkedHashSet<>();
    Optional.ofNullable(tree.getSelectionModel().getSelectedItem())
        .ifPresent(i -> subjects.add(i.getValue().subject()));
    for (TreeItem<Row> i : List.copyOf(tree.getSelectionModel().getSelectedItems())) {
      if (i != null) {
        subjects.add(i.getValue().subject());
      }
    }
    if (subjects.isEmpty()) {
      return;
    }
    following = true;
    table.bringUp(subjects.iterator().next().arch());
    table.select(subjects.toArray(Subject[]::new));
    following = false;
    sheet.reveal(table.selectionProperty().get());
  }

  /** Chooses in the list what is selected on the sheet. */
  private void follow() {
    if (following || getScene() == null) {
      return;
    }
    List<Subject> wanted = table.selectionProperty().get();
    Set<Subject> now = new LinkedHashSet<>();
    for (TreeItem<Row> i : tree.getSelectionModel().getSelectedItems()) {
      if (i != null) {
        now.add(i.getValue().subject());
      }
    }
    if (now.equals(Set.copyOf(wanted))) {
      return;
    }
    following = true;
    tree.getSelectionModel().clearSelection();
    for (int n = wanted.size() - 1; n >= 0; n--) {
      item(wanted.get(n)).ifPresent(this::choose);
    }
    following = false;
  }

  private Optional<TreeItem<Row>> item(Subject subject) {
    return items.entrySet().stream()
        .filter(e -> e.getKey().subject().equals(subject))
        .filter(e -> e.getKey().kind() != Row.Kind.SOFT_TISSUES)
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private void choose(TreeItem<Row> item) {
    for (TreeItem<Row> p = item.getParent(); p != null; p = p.getParent()) {
      p.setExpanded(true);
    }
    int row = tree.getRow(item);
    tree.getSelectionModel().select(row);
    if (cell(item).isEmpty()) {
      tree.scrollTo(Math.max(0, row - 4));
    }
  }

  /** The cell that shows a line, when it is wholly in view. */
  private Optional<Node> cell(TreeItem<Row> item) {
    return tree.lookupAll(".roll-row").stream()
        .filter(n -> n.isVisible() && ((RowCell) n).getTreeItem() == item)
        .filter(
            n -> {
              Bounds b = tree.sceneToLocal(n.localToScene(n.getBoundsInLocal()));
              return b.getMinY() >= 0 && b.getMaxY() <= tree.getHeight();
            })
        .findFirst();
  }

  private void pressed(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    long now = System.currentTimeMillis();
    KeyCode code = e.getCode();
    if (code == KeyCode.ENTER
        || code == KeyCode.SPACE && !typed.isInWords(now)
        || code == KeyCode.CONTEXT_MENU
        || code == KeyCode.F10 && e.isShiftDown()) {
      typed.clear();
      openMenu();
      e.consume();
    } else if (code == KeyCode.BACK_SPACE && typed.isGoingOn(now)) {
      typed.back(now);
      find();
      e.consume();
    } else if (code == KeyCode.ESCAPE) {
      if (!typed.isGoingOn(now)) {
        sheet.requestFocus();
      }
      typed.clear();
      foot.setText(Words.of("roll.hint"));
      e.consume();
    } else if (code == KeyCode.SPACE) {
      // It is part of what is being typed.
      e.consume();
    }
  }

  private void type(KeyEvent e) {
    long now = System.currentTimeMillis();
    String letter = e.getCharacter();
    boolean text =
        !e.isControlDown()
            && !e.isAltDown()
            && !e.isMetaDown()
            && letter.length() == 1
            && !Character.isISOControl(letter.charAt(0));
    if (!text || letter.isBlank() && !typed.isInWords(now)) {
      return;
    }
    typed.type(letter, now);
    find();
    e.consume();
  }

  private void find() {
    List<TreeItem<Row>> lines = new ArrayList<>();
    collect(tree.getRoot(), lines);
    int from = lines.indexOf(tree.getSelectionModel().getSelectedItem());
    Optional<TreeItem<Row>> found =
        typed.find(
            lines,
            from,
            i -> words.parts(i.getValue(), false).mark(),
            i -> words.sentence(i.getValue()));
    foot.setText(
        Words.of(
            found.isPresent() || typed.text().isEmpty() ? "roll.typed" : "roll.not-found",
            typed.text()));
    found.ifPresent(
        i -> {
          following = true;
          tree.getSelectionModel().clearSelection();
          following = false;
          choose(i);
        });
  }

  private static void collect(TreeItem<Row> item, List<TreeItem<Row>> out) {
    for (TreeItem<Row> child : item.getChildren()) {
      out.add(child);
      collect(child, out);
    }
  }

  private void menu(ContextMenuEvent e) {
    // The keys that ask for it have been heard already.
    if (!e.isKeyboardTrigger()) {
      build().ifPresent(m -> m.show(tree, e.getScreenX(), e.getScreenY()));
    }
    e.consume();
  }

  /** Opens the menu of the chosen lines below the first of them. */
  private void openMenu() {
    TreeItem<Row> item = tree.getSelectionModel().getSelectedItem();
    if (item == null) {
      return;
    }
    Node by = cell(item).orElse(tree);
    Bounds b = by.localToScreen(by.getBoundsInLocal());
    double below = by == tree ? b.getMinY() : b.getMaxY();
    build().ifPresent(m -> m.show(tree, b.getMinX() + 30, below));
  }

  private Optional<ContextMenu> build() {
    return table.selected().map(s -> sheet.menu(List.of(s)));
  }
}
