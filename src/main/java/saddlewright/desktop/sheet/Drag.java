package saddlewright.desktop.sheet;

import javafx.scene.input.MouseEvent;

/** What moving the pointer means while a button is down. */
interface Drag {
  /** The pointer has come to a place of the sheet's pane. */
  void to(MouseEvent e);

  /** The button has been let go. */
  default void drop(MouseEvent e) {}

  /** All is to be as it was. */
  default void cancel() {}
}
