package saddlewright.desktop;

import java.nio.file.Path;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.safekeeping.StateFolder;
import saddlewright.desktop.views.SystemLook;

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
    Path home = Path.of(System.getProperty("user.home", "."));
    String os = System.getProperty("os.name");
    EditorWindow window =
        new EditorWindow(
            stage,
            Remembered.folder(os, System.getenv(), home),
            StateFolder.of(os, System.getenv(), home));
    Preferences preferences = window.table().preferences();
    SystemLook.ask(
        os,
        System.getenv(),
        dark -> Platform.runLater(() -> preferences.systemDarkProperty().set(dark)));
    Runtime.getRuntime().addShutdownHook(new Thread(window::flush, "last safekeeping"));
    if (getParameters() != null) {
      window.open(getParameters().getRaw().stream().map(Path::of).toList());
    }
  }
}
