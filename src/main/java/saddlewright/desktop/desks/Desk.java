package saddlewright.desktop.desks;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Stage;
import saddlewright.desktop.Worktable;

/** A window of the editor, with the one case that lies in it. */
public interface Desk {
  Worktable table();

  Stage stage();

  /** The file from which the case was taken or to which it was saved last. */
  Optional<Path> place();

  /** Asks, where there is something to lose, whether the case may be left. */
  boolean mayLeave();

  /** Closes the window without a question. */
  void shut();
}
