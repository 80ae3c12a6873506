package saddlewright.desktop.actions;

import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import javafx.stage.Window;
import saddlewright.desktop.Words;

/** One field in which any action of the window is found by its name, and run. */
public final class ActionFinder {
  private static final int ROWS = 10;
  private static final double FROM_TOP = 0.12;

  /** Height of a row, and width of the box, in sizes of the type. */
  private static final double ROW_IN_TYPE = 2.4;

  private static final double WIDTH_IN_TYPE = 46;

  private final Supplier<List<Action>> actions;
  private final Popup popup = new Popup();
  private final TextField field = new TextField();
  private final ListView<Action> list = new ListView<>();
  private final Label none = new Label(Words.of("find.none"));
  private final VBox box = new VBox(6, field, list);
  private List<Action> all = List.of();

  /**
   * @param actions what can be done, asked anew each time the field is opened
   */
  public ActionFinder(Supplier<List<Action>> actions) {
    this.actions = actions;
    field.setId("find-action");
    field.setPromptText(Words.of("find.prompt"));
    field.setAccessibleText(Words.of("find.accessible"));
    field.textProperty().addListener(o -> search());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
    list.setId("found-actions");
    list.setAccessibleText(Words.of("find.found"));
    list.setCellFactory(v -> new Row());
    list.setFocusTraversable(false);
    list.setPlaceholder(none);
    box.getStyleClass().add("action-finder");
    popup.getContent().add(box);
    popup.setAutoHide(true);
    popup.setAutoFix(true);
    popup.setHideOnEscape(true);
  }

  /** Opens the field over a window. */
  public void show(Window over) {
    all = actions.get();
    Parent root = over.getScene().getRoot();
    // A popup has a scene of its own, which knows nothing of the window's look.
    box.getStylesheets().setAll(over.getScene().getStylesheets());
    box.setStyle(root.getStyle());
    box.getStyleClass().removeIf(c -> c.equals("editor"));
    box.getStyleClass().add(0, "editor");
    root.getPseudoClassStates().stream()
        .filter(p -> p.getPseudoClassName().equals("dark"))
        .findFirst()
        .ifPresentOrElse(
            p -> box.pseudoClassStateChanged(p, true),
            () ->
                box.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("dark"), false));
    field.clear();
    box.setPrefWidth(Math.min(over.getWidth() - 40, WIDTH_IN_TYPE * field.getFont().getSize()));
    Bounds b = root.localToScreen(root.getLayoutBounds());
    popup.show(
        over,
        b.getMinX() + (b.getWidth() - box.getPrefWidth()) / 2,
        b.getMinY() + FROM_TOP * b.getHeight());
    field.requestFocus();
    search();
  }

  public boolean isShowing() {
    return popup.isShowing();
  }

  /** The box that is shown. */
  public Region content() {
    return box;
  }

  private void search() {
    List<Action> found = ActionSearch.find(all, field.getText());
    list.getItems().setAll(found);
    list.getSelectionModel().selectFirst();
    list.scrollTo(0);
    double row = ROW_IN_TYPE * field.getFont().getSize();
    list.setFixedCellSize(row);
    list.setPrefHeight(Math.max(2, Math.min(ROWS, found.size())) * row + 4);
  }

  private void typed(KeyEvent e) {
    int at = list.getSelectionModel().getSelectedIndex();
    int last = list.getItems().size() - 1;
    int to =
        switch (e.getCode()) {
          case DOWN -> Math.min(last, at + 1);
          case UP -> Math.max(0, at - 1);
          case PAGE_DOWN -> Math.min(last, at + ROWS);
          case PAGE_UP -> Math.max(0, at - ROWS);
          default -> -1;
        };
    if (to >= 0) {
      list.getSelectionModel().select(to);
      list.scrollTo(Math.max(0, to - ROWS / 2));
      e.consume();
    } else if (e.getCode() == KeyCode.ENTER) {
      take(list.getSelectionModel().getSelectedItem());
      e.consume();
    } else if (e.getCode() == KeyCode.ESCAPE) {
      popup.hide();
      e.consume();
    }
  }

  private void take(Action action) {
    if (action != null && action.ready()) {
      popup.hide();
      action.run();
    }
  }

  /** An action, where it is found, and its keys. */
  private final class Row extends ListCell<Action> {
    private final Label name = new Label();
    private final Label place = new Label();
    private final Label keys = new Label();
    private final HBox row = new HBox(10, name, place, keys);

    Row() {
      row.setAlignment(Pos.CENTER_LEFT);
      name.setMinWidth(0);
      place.getStyleClass().add("soft");
      place.setMinWidth(0);
      place.setMaxWidth(Double.MAX_VALUE);
      HBox.setHgrow(place, Priority.ALWAYS);
      keys.getStyleClass().add("keys");
      keys.setMinWidth(Region.USE_PREF_SIZE);
      setAccessibleRole(AccessibleRole.LIST_ITEM);
      setOnMouseClicked(e -> take(getItem()));
    }

    @Override
    protected void updateItem(Action action, boolean empty) {
      super.updateItem(action, empty);
      if (empty || action == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      name.setText(action.on().orElse(false) ? Words.of("find.on", action.name()) : action.name());
      place.setText(action.ready() ? action.place() : Words.of("find.not-now", action.place()));
      String pressed = KeyNames.of(action.keys());
      keys.setText(pressed);
      keys.setVisible(!pressed.isEmpty());
      keys.setManaged(!pressed.isEmpty());
      setDisable(!action.ready());
      setAccessibleText(name.getText() + ", " + place.getText() + ", " + pressed);
      setGraphic(row);
    }
  }
}
