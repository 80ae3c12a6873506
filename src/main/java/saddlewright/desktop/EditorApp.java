package saddlewright.desktop;

import javafx.application.Application;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;

/** The editor as JavaFX starts it. */
public final class EditorApp extends Application {

  private static volatile Runnable onStarting = () -> {};
  private static volatile boolean started;

  /** Sets what runs as soon as the toolkit works, before the window is built. */
  static void whenStarting(Runnable action) {
    onStarting = action;
  }

  /** Whether the toolkit has worked, so that later failures are the program's own. */
  static boolean hasStarted() {
    return started;
  }

  @Override
  public void start(Stage stage) {
    started = true;
    onStarting.run();
    Label welcome = new Label("No case is open.");
    welcome.setId("welcome");
    BorderPane root = new BorderPane(welcome);
    root.setPadding(new Insets(12));
    stage.setTitle("Saddlewright");
    stage.setScene(new Scene(root, 1200, 800));
    stage.show();
  }
}
