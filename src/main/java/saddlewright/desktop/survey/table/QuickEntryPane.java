package saddlewright.desktop.survey.table;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.focus.AlwaysOne;
import saddlewright.desktop.survey.Item;

/** Quick entry of all that is charted, with what is known of the cell that one is in. */
public final class QuickEntryPane extends BorderPane {
  private final Worktable table;
  private final Map<Arch, QuickEntry> entries = new EnumMap<>(Arch.class);
  private final Map<Arch, EntryGrid> grids = new EnumMap<>(Arch.class);
  private final Map<Arch, RadioButton> tabs = new EnumMap<>(Arch.class);
  private final StackPane middle = new StackPane();
  private final Label where = new Label();
  private final Label what = new Label();
  private final Label rule = new Label();
  private final Button odd = new Button();
  private Arch arch = Arch.UPPER;
  private Optional<String> trouble = Optional.empty();

  public QuickEntryPane(Worktable table) {
    this.table = table;
    setId("quick-entry");
    getStyleClass().addAll("panel", "quick-entry");
    ToggleGroup group = new ToggleGroup();
    FlowPane top = new FlowPane();
    top.getStyleClass().add("entry-tabs");
    for (Arch a : Arch.values()) {
      RadioButton tab = new RadioButton(Words.of("entry.arch." + a.code()));
      tab.setId("entry-tab-" + a.code());
      tab.setToggleGroup(group);
      tab.setUserData(a);
      tabs.put(a, tab);
      top.getChildren().add(tab);
      entries.put(a, new QuickEntry(a));
    }
    AlwaysOne.of(group, t -> show((Arch) t.getUserData()));
    Label keys = new Label(Words.of("entry.keys"));
    keys.getStyleClass().add("soft");
    keys.setWrapText(true);
    keys.setMinHeight(USE_PREF_SIZE);
    setTop(new VBox(4, top, keys));
    setCenter(middle);
    where.getStyleClass().add("entry-where");
    where.setMinHeight(USE_PREF_SIZE);
    what.setId("entry-sentence");
    for (Label l : new Label[] {where, what, rule}) {
      l.setWrapText(true);
    }
    rule.getStyleClass().add("soft");
    odd.setId("entry-next-refused");
    odd.setOnAction(e -> nextRefused());
    VBox words = new VBox(2, where, what, rule);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox foot = new HBox(10, words, odd);
    foot.getStyleClass().add("entry-foot");
    setBottom(foot);
    table.currentProperty().addListener(o -> update());
    table.notationProperty().addListener(o -> update());
    table.laidProperty().addListener(o -> entries.values().forEach(QuickEntry::forget));
    addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    show(table.selected().map(Subject::arch).orElse(Arch.UPPER));
    table
        .selected()
        .filter(Subject.OfTooth.class::isInstance)
        .map(s -> ((Subject.OfTooth) s).tooth())
        .ifPresent(this::go);
  }

  /** Goes to a tooth. */
  public void go(Tooth tooth) {
    show(tooth.arch());
    grid().go(tooth);
  }

  /** The table of an arch is made when it is first looked at. */
  private EntryGrid grid() {
    return grids.computeIfAbsent(
        arch,
        a ->
            new EntryGrid(
                table,
                entries.get(a),
                this::tell,
                t -> {
                  trouble = Optional.of(t);
                  tell();
                }));
  }

  private void show(Arch a) {
    Optional.ofNullable(grids.get(arch)).ifPresent(EntryGrid::finish);
    arch = a;
    tabs.get(a).setSelected(true);
    middle.getChildren().setAll(grid());
    grid().update();
    grid().focus();
  }

  /** Puts the focus into the table. */
  public void focus() {
    grid().focus();
  }

  private void typed(KeyEvent e) {
    boolean turn = e.getCode() == KeyCode.PAGE_UP || e.getCode() == KeyCode.PAGE_DOWN;
    if (turn && e.isShortcutDown()) {
      show(arch == Arch.UPPER ? Arch.LOWER : Arch.UPPER);
      e.consume();
    }
  }

  private void update() {
    if (isShown()) {
      grids.values().forEach(EntryGrid::update);
      tell();
    }
  }

  private boolean isShown() {
    return getScene() != null
        && getScene().getWindow() != null
        && getScene().getWindow().isShowing();
  }

  /** Takes up what has changed while it was not seen. */
  public void shown() {
    update();
    focus();
  }

  private void tell() {
    EntryGrid grid = grids.get(arch);
    if (grid == null) {
      return;
    }
    QuickEntry entry = entries.get(arch);
    Place p = grid.here();
    Tooth tooth = entry.tooth(p);
    Item item = entry.item(p);
    ArchChart chart = grid.chart();
    where.setText(
        Words.of(
            "entry.where",
            table.notationProperty().get().format(tooth),
            ToothNames.full(tooth),
            item.name(tooth)));
    Optional<String> refusal = entry.refusal(p).map(QuickEntry.Refusal::sentence);
    Optional<String> caution = entry.caution(chart, p);
    what.getStyleClass().setAll("label", refusal.isPresent() ? "field-error" : "field-caution");
    String sentence =
        trouble
            .or(() -> refusal)
            .or(() -> caution)
            .or(() -> entry.remark(p))
            .or(
                () ->
                    entry.isAsked(chart, p)
                        ? Optional.empty()
                        : Optional.of(item.notAsked(chart, tooth)))
            .orElse("");
    trouble = Optional.empty();
    what.setText(sentence);
    rule.setText(
        item.published(tooth)
            .map(s -> item.rule() + " " + Words.of("survey.published", s))
            .orElseGet(item::rule));
    int n = entry.refusals().size();
    odd.setVisible(n > 0);
    odd.setManaged(n > 0);
    odd.setText(Words.of("entry.refused", n));
  }

  private void nextRefused() {
    QuickEntry entry = entries.get(arch);
    EntryGrid grid = grid();
    entry.refusals().keySet().stream()
        .filter(p -> p.compareTo(grid.here()) > 0)
        .findFirst()
        .or(() -> entry.refusals().keySet().stream().findFirst())
        .ifPresent(p -> grid.go(p, false));
    grid.focus();
  }
}
