package saddlewright.desktop;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/**
 * A window beside the editor that shows one pane of the same case; Escape closes it, and what is
 * undone there is undone in the case.
 */
final class SideWindow {
  private static final KeyCombination UNDO = KeyCombination.valueOf("Shortcut+Z");
  private static final KeyCombination REDO = KeyCombination.valueOf("Shortcut+Shift+Z");
  private static final KeyCombination REDO_TOO = KeyCombination.valueOf("Shortcut+Y");
  private static final KeyCombination CLOSE = KeyCombination.valueOf("Shortcut+W");

  private final Stage stage = new Stage();
  private final Region pane;

  /** A window that has not been shown yet. */
  SideWindow(Worktable table, Stage owner, String title, Region pane, double width, double height) {
    this.pane = pane;
    StackPane root = new StackPane(pane);
    DeskLook.wear(root, table);
    double[] room = DeskLook.room(table, width, height);
    Scene scene = new Scene(root, room[0], room[1]);
    scene.getStylesheets().setAll(owner.getScene().getStylesheets());
    answerKeys(scene, stage, table);
    stage.initOwner(owner);
    stage.setTitle(title);
    stage.setScene(scene);
    stage.setMinWidth(Math.min(width, 480));
    stage.setMinHeight(Math.min(height, 360));
  }

  /** Has a window beside the editor closed, and the case undone and redone, by the usual keys. */
  static void answerKeys(Scene scene, Stage stage, Worktable table) {
    scene.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE || CLOSE.match(e)) {
            stage.hide();
          } else if (UNDO.match(e)) {
            table.undo();
          } else if (REDO.match(e) || REDO_TOO.match(e)) {
            table.redo();
          }
        });
  }

  /** Sets what is done when it has been closed. */
  SideWindow onHidden(Runnable action) {
    stage.setOnHidden(e -> action.run());
    return this;
  }

  /** What it shows. */
  Region pane() {
    return pane;
  }

  Stage stage() {
    return stage;
  }

  void show() {
    stage.show();
    stage.toFront();
  }

  void hide() {
    stage.hide();
  }
}
