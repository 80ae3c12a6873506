package saddlewright.desktop;

import javafx.stage.Stage;
import saddlewright.desktop.panels.SchoolPane;

/** The window beside the editor in which a school profile is read and changed. */
final class SchoolWindow {
  private final SchoolPane pane;
  private final SideWindow window;

  SchoolWindow(Worktable table, Stage owner) {
    pane = new SchoolPane(table);
    window =
        new SideWindow(table, owner, Words.of("school.title"), pane, 1120, 740)
            .onHidden(() -> table.schoolShownProperty().set(false));
  }

  SchoolPane pane() {
    return pane;
  }

  void show() {
    window.show();
  }

  void hide() {
    window.hide();
  }
}
