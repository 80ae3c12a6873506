package saddlewright.desktop.prescription;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import saddlewright.desktop.Words;

/** The leaves of the prescription, of which one is looked at; and the switch between them. */
final class Leaves extends StackPane {
  private final FlowPane choice = new FlowPane(4, 4);
  private final ToggleGroup group = new ToggleGroup();
  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();

  Leaves() {
    choice.getStyleClass().add("leaves");
    choice.setVisible(false);
    choice.setManaged(false);
  }

  /** The switch, to be placed above; there is none to see while there is one leaf. */
  FlowPane choice() {
    return choice;
  }

  /**
   * Adds a leaf behind the others.
   *
   * @param key its name in the words of the window, under {@code leaf.}
   */
  void add(String key, Region leaf) {
    ToggleButton b = new ToggleButton(Words.of("leaf." + key));
    b.setId("leaf-" + key);
    b.getStyleClass().add("tool");
    b.setMinWidth(USE_PREF_SIZE);
    b.setToggleGroup(group);
    // A leaf that is chosen again stays.
    b.setOnAction(e -> b.setSelected(true));
    leaf.visibleProperty().bind(b.selectedProperty());
    b.setSelected(buttons.isEmpty());
    buttons.put(key, b);
    choice.getChildren().add(b);
    choice.setVisible(buttons.size() > 1);
    choice.setManaged(buttons.size() > 1);
    getChildren().add(leaf);
  }

  void show(String key) {
    buttons.get(key).setSelected(true);
  }
}
