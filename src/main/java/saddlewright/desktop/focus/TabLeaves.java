package saddlewright.desktop.focus;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Has Tab leave fields of several lines, as it leaves all others. */
public final class TabLeaves {
  private TabLeaves() {}

  /** In all that stands within a node, now or later. */
  public static void within(Node node) {
    node.addEventFilter(KeyEvent.KEY_PRESSED, TabLeaves::leave);
  }

  private static void leave(KeyEvent e) {
    if (e.getCode() == KeyCode.TAB
        && e.getTarget() instanceof TextArea area
        && !e.isControlDown()
        && !e.isAltDown()) {
      e.consume();
      // Such a field takes Tab as a sign and Ctrl+Tab as the way out.
      Event.fireEvent(
          area,
          new KeyEvent(
              KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, e.isShiftDown(), true, false, false));
    }
  }
}
