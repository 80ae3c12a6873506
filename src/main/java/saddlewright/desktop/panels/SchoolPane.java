package saddlewright.desktop.panels;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeTableColumn;
import javafx.scene.control.TreeTableRow;
import javafx.scene.control.TreeTableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.desktop.FileQuestion;
import saddlewright.desktop.FullWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.RuleGroup;

/**
 * Every limit and every weight of the school that judges the case, beside what the built-in profile
 * holds; each can be changed, and the case is judged anew at once.
 */
public final class SchoolPane extends SplitPane {
  private static final PseudoClass DEPARTS = PseudoClass.getPseudoClass("departs");
  private static final PseudoClass CHAPTER = PseudoClass.getPseudoClass("chapter");

  private final Worktable table;
  private final TextField filter = new TextField();
  private final CheckBox onlyDepartures = new CheckBox(Words.of("school.only-departures"));
  private final TreeTableView<SchoolRow> rows = new TreeTableView<>();
  private final TreeTableColumn<SchoolRow, String> there = new TreeTableColumn<>();
  private final VBox head = new VBox();
  private final ScrollPane detail = new ScrollPane();
  private final Label trouble = new Label();
  private Optional<SchoolRow> chosen = Optional.empty();

  public SchoolPane(Worktable table) {
    this.table = table;
    setId("school");
    getStyleClass().add("school");
    filter.setId("school-filter");
    filter.setPromptText(Words.of("school.filter"));
    filter.setAccessibleText(Words.of("school.filter"));
    filter.textProperty().addListener(o -> list());
    onlyDepartures.setId("school-only-departures");
    onlyDepartures.setOnAction(e -> list());
    columns();
    trouble.getStyleClass().add("field-error");
    trouble.setId("school-trouble");
    trouble.setWrapText(true);
    trouble.setMinHeight(USE_PREF_SIZE);
    trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
    HBox finding = new HBox(12, filter, onlyDepartures);
    finding.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(filter, Priority.ALWAYS);
    VBox left = new VBox(finding, rows);
    left.getStyleClass().add("school-list");
    VBox.setVgrow(rows, Priority.ALWAYS);
    detail.setFitToWidth(true);
    detail.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(detail, Priority.ALWAYS);
    VBox right = new VBox(head, files(), trouble, detail);
    right.getStyleClass().add("school-detail");
    right.setMinWidth(330);
    getItems().addAll(left, right);
    setDividerPositions(0.63);
    setResizableWithParent(right, false);
    rows.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, now) -> {
              if (now != null) {
                chosen = Optional.of(now.getValue());
                showDetail();
              }
            });
    rows.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            Optional.ofNullable(detail.getContent())
                .map(c -> c.lookup("#school-value"))
                .or(() -> Optional.ofNullable(detail.getContent().lookup("#school-weight")))
                .ifPresent(Node::requestFocus);
            e.consume();
          }
        });
    // A field that commits when it is left must not be replaced while the focus is on its way.
    table
        .currentProperty()
        .addListener(
            (o, was, now) -> {
              if (!was.profile().equals(now.profile())) {
                Platform.runLater(this::refresh);
              }
            });
    refresh();
  }

  private HBox files() {
    Button in = new Button(Words.of("school.import"));
    in.setId("school-import");
    in.setOnAction(
        e -> FileQuestion.toOpen(chooser(), getScene().getWindow()).ifPresent(this::importFrom));
    Button out = new Button(Words.of("school.export"));
    out.setId("school-export");
    out.setOnAction(
        e -> {
          FileChooser chooser = chooser();
          chooser.setInitialFileName(table.current().profile().asOwn().id() + ".json");
          FileQuestion.toSave(chooser, getScene().getWindow()).ifPresent(this::exportTo);
        });
    HBox box = new HBox(8, in, out);
    box.getStyleClass().add("school-files");
    return box;
  }

  private static FileChooser chooser() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Words.of("school.profile"), "*.json"));
    return chooser;
  }

  /** Has the case judged by the profile of a file; what is wrong with it is said here. */
  public void importFrom(Path file) {
    try {
      var read = ProfileStore.load(file);
      table.apply(
          Words.of("edit.school", read.profile().title()), table.current().withProfile(read));
      trouble.setText("");
    } catch (CaseFileException e) {
      trouble.setText(e.sentences());
    }
  }

  public void exportTo(Path file) {
    Path named =
        file.toString().toLowerCase(Locale.ROOT).endsWith(".json")
            ? file
            : file.resolveSibling(file.getFileName() + ".json");
    try {
      ProfileStore.save(table.current().schoolProfile(), named);
      trouble.setText("");
    } catch (CaseFileException e) {
      trouble.setText(e.sentences());
    }
  }

  private void columns() {
    rows.setId("school-rows");
    rows.setShowRoot(false);
    rows.setAccessibleText(Words.of("school.rows"));
    TreeTableColumn<SchoolRow, String> what = new TreeTableColumn<>(Words.of("school.what"));
    TreeTableColumn<SchoolRow, String> here = new TreeTableColumn<>(Words.of("school.here"));
    show(what, SchoolRow::name);
    show(here, r -> r.held(table.current().profile()));
    show(there, r -> r.held(table.current().profile().base()));
    here.getStyleClass().add("school-here");
    here.setPrefWidth(95);
    there.setPrefWidth(110);
    here.setMinWidth(70);
    there.setMinWidth(70);
    what.setPrefWidth(440);
    rows.getColumns().setAll(List.of(what, here, there));
    rows.setColumnResizePolicy(TreeTableView.CONSTRAINED_RESIZE_POLICY);
    rows.setRowFactory(
        v ->
            new TreeTableRow<>() {
              @Override
              protected void updateItem(SchoolRow row, boolean empty) {
                super.updateItem(row, empty);
                boolean none = empty || row == null;
                pseudoClassStateChanged(DEPARTS, !none && row.departs(table.current().profile()));
                pseudoClassStateChanged(CHAPTER, !none && row instanceof SchoolRow.Chapter);
              }
            });
  }

  private static void show(
      TreeTableColumn<SchoolRow, String> column, Function<SchoolRow, String> words) {
    column.setSortable(false);
    column.setReorderable(false);
    FullWords.in(column);
    column.setCellValueFactory(
        c -> new ReadOnlyStringWrapper(words.apply(c.getValue().getValue())));
  }

  private void refresh() {
    Optional<String> focus =
        Optional.ofNullable(getScene()).map(s -> s.getFocusOwner()).map(Node::getId);
    head.getChildren().setAll(SchoolForm.head(table));
    there.setText(table.current().profile().base().title());
    list();
    showDetail();
    focus
        .map(id -> lookup("#" + id))
        .filter(n -> n != rows && n != filter)
        .ifPresent(Node::requestFocus);
  }

  private void showDetail() {
    detail.setContent(SchoolForm.of(table, chosen));
  }

  /** Lists what the filter lets through; the line that was chosen stays chosen. */
  private void list() {
    Optional<SchoolRow> kept = chosen;
    TreeItem<SchoolRow> root = new TreeItem<>(new SchoolRow.Chapter(""));
    List<SchoolRow> limits = new ArrayList<>();
    for (Quantity q : Quantity.values()) {
      limits.add(new SchoolRow.OfLimit(q));
    }
    chapter(root, Words.of("school.limits"), limits);
    for (RuleGroup g : RuleGroup.values()) {
      List<SchoolRow> weights = new ArrayList<>();
      g.rules().forEach(r -> weights.add(new SchoolRow.OfRule(r)));
      chapter(root, Words.of("school.weights", g.title()), weights);
    }
    rows.setRoot(root);
    rows.setPlaceholder(new Label(Words.of("school.nothing")));
    kept.flatMap(row -> find(root, row)).ifPresent(i -> rows.getSelectionModel().select(i));
  }

  private void chapter(TreeItem<SchoolRow> root, String title, List<SchoolRow> all) {
    Profile school = table.current().profile();
    TreeItem<SchoolRow> chapter = new TreeItem<>(new SchoolRow.Chapter(title));
    chapter.setExpanded(true);
    for (SchoolRow row : all) {
      if ((!onlyDepartures.isSelected() || row.departs(school))
          && row.matches(filter.getText(), school)) {
        chapter.getChildren().add(new TreeItem<>(row));
      }
    }
    if (!chapter.getChildren().isEmpty()) {
      root.getChildren().add(chapter);
    }
  }

  private static Optional<TreeItem<SchoolRow>> find(TreeItem<SchoolRow> root, SchoolRow row) {
    return root.getChildren().stream()
        .flatMap(c -> c.getChildren().stream())
        .filter(i -> i.getValue().equals(row))
        .findFirst();
  }

  /** Chooses the limit of a quantity in the list. */
  public void choose(Quantity quantity) {
    find(rows.getRoot(), new SchoolRow.OfLimit(quantity))
        .ifPresent(i -> rows.getSelectionModel().select(i));
  }
}
