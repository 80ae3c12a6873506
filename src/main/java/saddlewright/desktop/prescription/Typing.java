package saddlewright.desktop.prescription;

import java.util.Optional;
import java.util.function.UnaryOperator;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Worktable;

/** An edit that goes on while a field is typed in, so that its words are taken back together. */
final class Typing {
  private final Worktable table;
  private final String name;
  private Optional<Case> written = Optional.empty();

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
    if (next.equals(table.current())) {
      // A control that shows what stands in the case has not been typed in.
      return;
    }
    // By identity: after an undo, or an edit made elsewhere, a new edit begins.
    if (written.filter(w -> w == table.current()).isPresent()) {
      table.extend(next);
    } else {
      table.apply(name, next);
    }
    written = Optional.of(table.current());
  }

  /** The field has been left: what comes next is another edit. */
  void end() {
    written = Optional.empty();
  }
}
