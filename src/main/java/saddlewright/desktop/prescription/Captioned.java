package saddlewright.desktop.prescription;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A control of a row with its name above it. */
final class Captioned extends VBox {
  Captioned(String caption, Node shown, Node input) {
    getStyleClass().add("captioned");
    Label name = new Label(caption);
    name.getStyleClass().add("caption");
    name.setMinWidth(USE_PREF_SIZE);
    name.setLabelFor(input);
    getChildren().addAll(name, shown);
    setMinWidth(USE_PREF_SIZE);
  }
}
