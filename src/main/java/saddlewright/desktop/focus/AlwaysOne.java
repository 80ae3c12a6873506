package saddlewright.desktop.focus;

import java.util.function.Consumer;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleGroup;

/** Toggles of which one is always on, be it chosen by a click or by the arrow keys. */
public final class AlwaysOne {
  private AlwaysOne() {}

  /**
   * Has what is chosen in a group act. The arrow keys choose without the action of a button, so
   * that it is the choice that must act.
   */
  public static void of(ToggleGroup group, Consumer<Toggle> act) {
    group
        .selectedToggleProperty()
        .addListener(
            (o, was, now) -> {
              if (now == null) {
                group.selectToggle(was);
              } else {
                act.accept(now);
              }
            });
  }
}
