package saddlewright.desktop.prescription;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Several lines of text: it grows with them, and Tab leads on to the next field. */
final class Lines extends TextArea {
  private static final int FEWEST = 2;
  private static final int MOST = 8;
  private static final int SIGNS_IN_LINE = 70;

  Lines() {
    setWrapText(true);
    setPrefRowCount(FEWEST);
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.TAB && !e.isControlDown() && !e.isShiftDown()) {
            e.consume();
            // A text area takes Tab as a sign and Ctrl+Tab as the way out.
            fireEvent(
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, true, false, false));
          }
        });
  }

  /**
   * Makes room for what stands in it.
   *
   * @param brief whether one line will do
   */
  void grow(boolean brief) {
    int n = getText().lines().mapToInt(l -> 1 + l.length() / SIGNS_IN_LINE).sum();
    setPrefRowCount(brief ? 1 : Math.max(FEWEST, Math.min(MOST, n)));
  }
}
