package saddlewright.desktop.history;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** The edits of the case in order; choosing one goes back, or on, to the case as it was then. */
public final class HistoryPane extends BorderPane {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");
  private static final PseudoClass UNDONE = PseudoClass.getPseudoClass("undone");
  private static final PseudoClass NOW = PseudoClass.getPseudoClass("now");

  /** A state of the case, by the number of edits that led to it. */
  private record Row(int state, String name, Optional<Instant> at) {}

  private final Worktable table;
  private final ListView<Row> list = new ListView<>();

  public HistoryPane(Worktable table) {
    this.table = table;
    getStyleClass().addAll("panel", "history");
    Label hint = new Label(Words.of("history.hint"));
    hint.setWrapText(true);
    hint.getStyleClass().add("soft");
    setTop(hint);
    setCenter(list);
    list.setId("history");
    list.setAccessibleText(Words.of("history.title"));
    list.setCellFactory(v -> new Cell());
    list.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
            go(list.getSelectionModel().getSelectedItem());
            e.consume();
          }
        });
    table.editsProperty().addListener(o -> fill());
    table.standingProperty().addListener(o -> show());
    table.savedStateProperty().addListener(o -> list.refresh());
    fill();
  }

  private void fill() {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(0, Words.of("history.laid"), Optional.empty()));
    for (History.Entry e : table.editsProperty().get()) {
      rows.add(new Row(rows.size(), Words.capital(e.name()), Optional.of(e.at())));
    }
    if (!rows.equals(list.getItems())) {
      list.getItems().setAll(rows);
    }
    show();
  }

  private void show() {
    int now = table.standingProperty().get();
    list.refresh();
    if (now < list.getItems().size()) {
      list.getSelectionModel().select(now);
      list.scrollTo(Math.max(0, now - 6));
    }
  }

  private void go(Row row) {
    if (row != null) {
      table.goTo(row.state());
    }
  }

  private final class Cell extends ListCell<Row> {
    private final Label name = new Label();
    private final Label note = new Label();
    private final Label time = new Label();
    private final HBox box = new HBox(8, name, note, time);

    Cell() {
      box.setAlignment(Pos.CENTER_LEFT);
      name.setMaxWidth(Double.MAX_VALUE);
      name.setMinWidth(0);
      HBox.setHgrow(name, Priority.ALWAYS);
      note.setMinWidth(Region.USE_PREF_SIZE);
      note.getStyleClass().add("keys");
      time.setMinWidth(Region.USE_PREF_SIZE);
      time.getStyleClass().add("soft");
      getStyleClass().add("history-row");
      prefWidthProperty().bind(list.widthProperty().subtract(24));
      setOnMouseClicked(e -> go(getItem()));
    }

    @Override
    protected void updateItem(Row row, boolean empty) {
      super.updateItem(row, empty);
      int now = table.standingProperty().get();
      boolean shown = !empty && row != null;
      pseudoClassStateChanged(UNDONE, shown && row.state() > now);
      pseudoClassStateChanged(NOW, shown && row.state() == now);
      if (!shown) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      name.setText(row.name());
      List<String> notes = new ArrayList<>();
      if (row.state() == now) {
        notes.add(Words.of("history.now"));
      } else if (row.state() > now) {
        notes.add(Words.of("history.undone"));
      }
      if (row.state() == table.savedStateProperty().get()) {
        notes.add(Words.of("history.saved"));
      }
      note.setText(String.join(", ", notes));
      time.setText(row.at().map(t -> TIME.format(t.atZone(ZoneId.systemDefault()))).orElse(""));
      setAccessibleText(row.name() + ", " + note.getText() + ", " + time.getText());
      setGraphic(box);
    }
  }
}
