package saddlewright.desktop.actions;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCombination;

/** The keys of a menu item beyond the one that its menu shows. */
public final class MoreKeys {
  private static final String KEY = "more-keys";

  private MoreKeys() {}

  /** Binds a further key to an item. */
  public static MenuItem add(MenuItem item, String keys) {
    item.getProperties()
        .put(
            KEY,
            Stream.concat(of(item).stream(), Stream.of(KeyCombination.valueOf(keys))).toList());
    return item;
  }

  @SuppressWarnings("unchecked") // put there by add alone
  static List<KeyCombination> of(MenuItem item) {
    return (List<KeyCombination>) item.getProperties().getOrDefault(KEY, List.of());
  }

  /** Has the further keys of all items work in a scene. */
  public static void install(Scene scene, Iterable<? extends MenuItem> items) {
    for (MenuItem item : items) {
      for (KeyCombination k : of(item)) {
        scene
            .getAccelerators()
            .put(
                k,
                () -> {
                  if (!item.isDisable()) {
                    item.fire();
                  }
                });
      }
    }
  }
}
