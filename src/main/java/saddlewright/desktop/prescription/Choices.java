package saddlewright.desktop.prescription;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** Lists to choose from, of which the chosen acts at once. */
final class Choices {
  private Choices() {}

  static <T> ComboBox<T> of(
      String id, String name, List<T> options, Function<T, String> words, Consumer<T> chosen) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.setAccessibleText(name);
    box.getItems().setAll(options);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T value) {
            return value == null ? "" : words.apply(value);
          }

          @Override
          public T fromString(String text) {
            return null;
          }
        });
    box.setOnAction(
        e -> {
          if (box.getValue() != null) {
            chosen.accept(box.getValue());
          }
        });
    return box;
  }
}
