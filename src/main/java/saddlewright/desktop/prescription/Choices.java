package saddlewright.desktop.prescription;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.Region;
import saddlewright.desktop.InWords;

/** Lists to choose from, of which the chosen acts at once. */
final class Choices {
  private Choices() {}

  static <T> ComboBox<T> of(
      String id, String name, List<T> options, Function<T, String> words, Consumer<T> chosen) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.setAccessibleText(name);
    box.getItems().setAll(options);
    box.setConverter(new InWords<>(words));
    box.setMinWidth(Region.USE_PREF_SIZE);
    box.setOnAction(
        e -> {
          if (box.getValue() != null) {
            chosen.accept(box.getValue());
          }
        });
    return box;
  }
}
