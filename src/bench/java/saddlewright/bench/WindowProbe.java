package saddlewright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import saddlewright.desktop.EditorWindow;

/**
 * One window in a process of its own, which prints what it measures and halts. What is measured is
 * the first argument:
 *
 * <ul>
 *   <li>{@code empty}: an empty window, from the start of the Java machine to its first frame
 *   <li>{@code themed}: the same with one label, so that the theme of the toolkit is loaded
 *   <li>{@code editor}: the editor with its welcome page
 *   <li>{@code edits}, {@code frames}: see {@link EditProbe} and {@link FrameProbe}
 *   <li>{@code memory-empty}, {@code memory-editor}: see {@link MemoryProbe}
 * </ul>
 */
public final class WindowProbe {
  private static String what;

  public static void main(String[] args) {
    what = args[0];
    Application.launch(Shown.class);
  }

  /** What JavaFX starts; the launcher refuses a main class of this kind on the class path. */
  public static final class Shown extends Application {
    @Override
    public void start(Stage stage) throws Exception {
      show(stage);
    }
  }

  private static void show(Stage stage) throws Exception {
    switch (what) {
      case "empty", "themed", "memory-empty" -> {
        BorderPane root = new BorderPane();
        if (what.equals("themed")) {
          root.setCenter(new Label("Saddlewright"));
        }
        stage.setScene(new Scene(root, 1200, 800));
        stage.show();
        if (what.equals("memory-empty")) {
          MemoryProbe.afterAWhile();
        } else {
          reportFirstFrame(stage.getScene());
        }
      }
      case "editor" -> {
        editor(stage);
        reportFirstFrame(stage.getScene());
      }
      case "edits" -> new EditProbe(editor(stage)).start();
      case "frames" -> new FrameProbe(editor(stage), stage.getScene()).start();
      case "memory-editor" -> new MemoryProbe(editor(stage)).start();
      default -> throw new IllegalArgumentException(what);
    }
  }

  private static EditorWindow editor(Stage stage) throws Exception {
    Path settings = Files.createTempDirectory("settings");
    return new EditorWindow(stage, settings);
  }

  /** The second pulse begins when the frame of the first has been handed to the renderer. */
  private static void reportFirstFrame(Scene scene) {
    int[] pulses = {0};
    scene.addPostLayoutPulseListener(
        () -> {
          if (++pulses[0] == 2) {
            long start = ManagementFactory.getRuntimeMXBean().getStartTime();
            var system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
            finish(
                "%d %d",
                System.currentTimeMillis() - start, system.getProcessCpuTime() / 1_000_000);
          }
          Platform.requestNextPulse();
        });
    Platform.requestNextPulse();
  }

  /** Prints what was measured and ends the process. */
  static void finish(String format, Object... figures) {
    System.out.println("measured " + String.format(Locale.ROOT, format, figures));
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }
}
