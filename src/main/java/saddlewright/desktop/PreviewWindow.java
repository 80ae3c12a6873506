package saddlewright.desktop;

import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import saddlewright.desktop.preview.PreviewPane;

/** The window beside the editor that shows the pages of the prescription. */
final class PreviewWindow {
  private static final KeyCombination SAVE = KeyCombination.valueOf("Shortcut+S");

  // It has no owner, which would keep it above the sheet that is being worked on beside it.
  private final Stage stage = new Stage();
  private final PreviewPane pane;

  PreviewWindow(
      Worktable table,
      CaseFiles files,
      PrescriptionFiles prescriptions,
      Printing printing,
      Stage editor) {
    pane =
        new PreviewPane(
            table,
            printing,
            new PreviewPane.Actions() {
              @Override
              public void save() {
                prescriptions.save(stage);
              }

              @Override
              public void issue() {
                prescriptions.issue(stage, editor::toFront);
              }
            });
    VBox root = new VBox(new NoticeBar(table), pane);
    VBox.setVgrow(pane, Priority.ALWAYS);
    DeskLook.wear(root, table);
    double[] room = DeskLook.room(table, 1120, 860);
    Scene scene = new Scene(root, room[0], room[1]);
    scene.getStylesheets().setAll(editor.getScene().getStylesheets());
    SideWindow.answerKeys(scene, stage, table);
    scene.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (SAVE.match(e)) {
            files.save();
          }
        });
    stage.setScene(scene);
    stage.setMinWidth(720);
    stage.setMinHeight(480);
    stage
        .titleProperty()
        .bind(
            javafx.beans.binding.Bindings.createStringBinding(
                () -> Words.of("pages.title", table.current().reference()),
                table.currentProperty()));
    stage.setOnShown(e -> pane.watch(true));
    stage.setOnHidden(
        e -> {
          pane.watch(false);
          table.pagesShownProperty().set(false);
        });
    stage.xProperty().addListener(o -> pane.moved());
    stage.yProperty().addListener(o -> pane.moved());
  }

  PreviewPane pane() {
    return pane;
  }

  Stage stage() {
    return stage;
  }

  void show() {
    stage.show();
    stage.toFront();
    stage.requestFocus();
  }

  void hide() {
    stage.hide();
  }
}
