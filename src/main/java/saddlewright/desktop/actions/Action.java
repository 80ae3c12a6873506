package saddlewright.desktop.actions;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCombination;

/**
 * Something that can be done, as it stands at this moment.
 *
 * @param path menus that lead to it, the menu of the bar first
 * @param name what it is called, without the mark of its access key
 * @param keys the keys that do it, the usual one first
 * @param ready whether it can be done now
 * @param on whether it is switched on; empty where there is nothing to switch
 * @param deed does it
 */
public record Action(
    List<String> path,
    String name,
    List<KeyCombination> keys,
    boolean ready,
    Optional<Boolean> on,
    Runnable deed) {

  public Action {
    path = List.copyOf(path);
    keys = List.copyOf(keys);
  }

  /** Does it, if it can be done now. */
  public void run() {
    if (ready) {
      deed.run();
    }
  }

  /** The menus that lead to it, as one reads them. */
  public String place() {
    return String.join(" \u203a ", path);
  }
}
