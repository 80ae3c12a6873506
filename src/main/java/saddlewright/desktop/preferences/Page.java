package saddlewright.desktop.preferences;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.Property;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;

/** What is set in one place of the preferences; every change holds at once. */
abstract class Page {
  private final String key;
  private final VBox lines = new VBox();

  /**
   * @param key under which its words stand in the message file
   */
  Page(String key) {
    this.key = key;
    lines.getStyleClass().add("preferences-lines");
    lines.setId("preferences-" + key);
  }

  final String key() {
    return key;
  }

  final String title() {
    return Words.of("preferences.page." + key);
  }

  /** All of it, as it stands in the window. */
  Region content() {
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  /** Sets everything on it to the usual. */
  abstract void reset();

  /** What brings the page back to how it is set now. */
  abstract Runnable wayBack();

  /** Is told when it is about to be looked at. */
  void look() {}

  final void add(Node line) {
    lines.getChildren().add(line);
  }

  final void say(String text) {
    add(words(text, "preferences-hint"));
  }

  final void heading(String text) {
    add(words(text, "form-heading"));
  }

  /** A name with its control beside it, or below it where the window is narrow. */
  final void row(String name, Node control, Optional<String> hint) {
    Label label = words(name, "preferences-name");
    label.setLabelFor(control);
    if (control.getAccessibleText() == null) {
      control.setAccessibleText(name);
    }
    GridPane row = new GridPane();
    row.getStyleClass().add("preferences-row");
    row.add(label, 0, 0);
    row.add(control, 1, 0);
    GridPane.setHgrow(control, Priority.ALWAYS);
    hint.ifPresent(h -> row.add(words(h, "preferences-hint"), 1, 1));
    row.setAlignment(Pos.CENTER_LEFT);
    add(row);
  }

  /** A list of which one is chosen. */
  static <T> ComboBox<T> choice(
      String id, List<T> options, Function<T, String> words, Property<T> property) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.getItems().setAll(options);
    box.setConverter(new InWords<>(words));
    box.valueProperty().bindBidirectional(property);
    return box;
  }

  static Label words(String text, String style) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
