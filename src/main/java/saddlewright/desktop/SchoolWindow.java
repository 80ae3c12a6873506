package saddlewright.desktop;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import saddlewright.desktop.panels.SchoolPane;

/** The window beside the editor in which a school profile is read and changed. */
final class SchoolWindow {
  private static final KeyCombination UNDO = KeyCombination.valueOf("Shortcut+Z");
  private static final KeyCombination REDO = KeyCombination.valueOf("Shortcut+Shift+Z");

  private final Stage stage = new Stage();
  private final SchoolPane pane;

  SchoolWindow(Worktable table, Stage owner) {
    pane = new SchoolPane(table);
    StackPane root = new StackPane(pane);
    DeskLook.wear(root, table);
    Scene scene = new Scene(root, 1120, 740);
    scene.getStylesheets().setAll(owner.getScene().getStylesheets());
    scene.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            stage.hide();
          } else if (UNDO.match(e)) {
            table.undo();
          } else if (REDO.match(e)) {
            table.redo();
          }
        });
    stage.initOwner(owner);
    stage.setTitle(Words.of("school.title"));
    stage.setScene(scene);
    stage.setMinWidth(800);
    stage.setMinHeight(480);
    stage.setOnHidden(e -> table.schoolShownProperty().set(false));
  }

  SchoolPane pane() {
    return pane;
  }

  void show() {
    stage.show();
    stage.toFront();
  }

  void hide() {
    stage.hide();
  }
}
