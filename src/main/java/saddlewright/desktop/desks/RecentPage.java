package saddlewright.desktop.desks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** The files that were opened lately, to open one of them or to take it off the list. */
public final class RecentPage extends VBox {
  private final RecentFiles recent;
  private final Consumer<Path> open;
  private final ListView<Path> list = new ListView<>();
  private final Set<Path> missing = new HashSet<>();
  private final ListChangeListener<Path> following = c -> fill();

  public RecentPage(RecentFiles recent, Consumer<Path> open) {
    this.recent = recent;
    this.open = open;
    setId("recent-page");
    getStyleClass().add("recent-page");
    list.setId("recent-list");
    list.setAccessibleText(Words.of("welcome.recent"));
    list.setCellFactory(v -> new Line());
    list.setOnMouseClicked(
        e -> {
          if (e.getClickCount() == 2) {
            chosen().ifPresent(open);
          }
        });
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            chosen().ifPresent(open);
            e.consume();
          } else if (e.getCode() == KeyCode.DELETE || e.getCode() == KeyCode.BACK_SPACE) {
            remove();
            e.consume();
          }
        });
    VBox.setVgrow(list, Priority.ALWAYS);
    Label nothing = new Label();
    nothing.setWrapText(true);
    nothing
        .textProperty()
        .bind(
            Bindings.when(recent.privateProperty())
                .then(Words.of("recent.private"))
                .otherwise(Words.of("welcome.no-recent")));
    list.setPlaceholder(nothing);
    Button show = button("recent-open", "recent.open", () -> chosen().ifPresent(open));
    Button off = button("recent-remove", "recent.remove", this::remove);
    var none = list.getSelectionModel().selectedItemProperty().isNull();
    show.disableProperty().bind(none);
    off.disableProperty().bind(none);
    Button clear = button("recent-clear", "recent.clear", recent::forgetAll);
    CheckBox hidden = new CheckBox(Words.of("recent.keep-private"));
    hidden.setId("recent-private");
    hidden.setWrapText(true);
    hidden.setMinHeight(Region.USE_PREF_SIZE);
    hidden.selectedProperty().bindBidirectional(recent.privateProperty());
    Label why = new Label(Words.of("recent.why-private"));
    why.getStyleClass().add("hint-line");
    why.setWrapText(true);
    why.setMinHeight(Region.USE_PREF_SIZE);
    FlowPane buttons = new FlowPane(8, 8, show, off, clear);
    buttons.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(list, buttons, hidden, why);
    recent.shown().addListener(new WeakListChangeListener<>(following));
    fill();
  }

  private static Button button(String id, String key, Runnable action) {
    Button b = new Button(Words.of(key));
    b.setId(id);
    b.setOnAction(e -> action.run());
    return b;
  }

  private Optional<Path> chosen() {
    return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
  }

  private void remove() {
    int at = list.getSelectionModel().getSelectedIndex();
    chosen().ifPresent(recent::forget);
    list.getSelectionModel().select(Math.min(at, list.getItems().size() - 1));
  }

  private void fill() {
    list.getItems().setAll(recent.shown());
    if (list.getSelectionModel().isEmpty()) {
      list.getSelectionModel().selectFirst();
    }
    look(List.copyOf(list.getItems()));
  }

  /** Looks for the files away from the thread of the window: a folder far away may keep it long. */
  private void look(List<Path> files) {
    Thread looking =
        new Thread(
            () -> {
              List<Path> gone = files.stream().filter(f -> !Files.exists(f)).toList();
              Platform.runLater(
                  () -> {
                    missing.clear();
                    missing.addAll(gone);
                    list.refresh();
                  });
            },
            "recent files");
    looking.setDaemon(true);
    looking.start();
  }

  /** Name, folder below it, and whether it is still there. */
  private final class Line extends ListCell<Path> {
    private final Label name = new Label();
    private final Label folder = new Label();
    private final VBox box = new VBox(1, name, folder);

    Line() {
      name.getStyleClass().add("recent-name");
      folder.getStyleClass().add("recent-folder");
      box.setMinWidth(0);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(Path file, boolean empty) {
      super.updateItem(file, empty);
      if (empty || file == null) {
        setGraphic(null);
        setAccessibleText("");
        return;
      }
      name.setText(file.getFileName().toString());
      String where = RecentFiles.folderInWords(file);
      folder.setText(missing.contains(file) ? Words.of("recent.gone", where) : where);
      setAccessibleText(Words.of("recent.line", name.getText(), folder.getText()));
      setGraphic(box);
    }
  }
}
