package saddlewright.desktop.prescription;

import javafx.scene.control.TextArea;

/** Several lines of text: it grows with them. */
final class Lines extends TextArea {
  private static final int FEWEST = 2;
  private static final int MOST = 8;
  private static final int SIGNS_IN_LINE = 70;

  Lines() {
    setWrapText(true);
    setPrefRowCount(FEWEST);
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
