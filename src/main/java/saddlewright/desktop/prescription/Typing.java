package saddlewright.desktop.prescription;

import java.util.function.UnaryOperator;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;

/** An edit that goes on while a field is typed in, so that its words are taken back together. */
final class Typing {
  private final Worktable table;
  private final String name;
  private Gesture gesture = new Gesture();

  /**
   * @param name what undo calls the edit; never what is typed
   */
  Typing(Worktable table, String name) {
    this.table = table;
    this.name = name;
  }

  void write(UnaryOperator<PrescriptionDetails> change) {
    Case now = table.current();
    writeCase(now.with(change.apply(now.prescription())));
  }

  void writeCase(Case next) {
    // After an undo, or an edit made elsewhere, the history begins another edit by itself.
    table.apply(name, next, gesture);
  }

  /** The field has been left: what comes next is another edit. */
  void end() {
    gesture = new Gesture();
  }
}
