package saddlewright.desktop.actions;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.input.KeyCombination;

/** Keys as they stand on a keyboard and in a menu. */
final class KeyNames {
  private KeyNames() {}

  static String of(KeyCombination keys) {
    return keys.getDisplayText();
  }

  /** All of them, the usual one first. */
  static String of(List<KeyCombination> keys) {
    return keys.stream().map(KeyNames::of).collect(Collectors.joining(", "));
  }
}
