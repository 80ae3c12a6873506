package saddlewright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.desktop.EditorWindow;
import saddlewright.desktop.Worktable;

/**
 * One window in a process of its own: an empty one or the editor, timed from the start of the Java
 * machine to its first frame, or edits timed until their pixels can be read.
 */
public final class WindowProbe {
  private static final int WARM = 60;
  private static final int TIMED = 120;
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
    if (what.equals("empty")) {
      stage.setScene(new Scene(new BorderPane(), 1200, 800));
      stage.show();
      reportFirstFrame(stage.getScene());
      return;
    }
    EditorWindow window = new EditorWindow(stage, Files.createTempDirectory("settings"));
    if (what.equals("editor")) {
      reportFirstFrame(stage.getScene());
    } else {
      Platform.runLater(() -> time(window.table(), stage.getScene()));
    }
  }

  /** The second pulse begins when the frame of the first has been handed to the renderer. */
  private static void reportFirstFrame(Scene scene) {
    int[] pulses = {0};
    scene.addPostLayoutPulseListener(
        () -> {
          if (++pulses[0] == 2) {
            long start = ManagementFactory.getRuntimeMXBean().getStartTime();
            System.out.println(System.currentTimeMillis() - start);
            System.out.flush();
            Runtime.getRuntime().halt(0);
          }
          Platform.requestNextPulse();
        });
    Platform.requestNextPulse();
  }

  /** Takes one component away and puts it back; a snapshot waits until it has been painted. */
  private static void time(Worktable table, Scene scene) {
    Case whole = DemoCase.largest();
    table.lay(whole, java.util.Optional.empty());
    ArchDesign design = whole.design(Arch.LOWER);
    Case without =
        whole.with(design.without(design.components().get(design.components().size() - 2).id()));
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < WARM + TIMED; i++) {
      long before = System.nanoTime();
      table.apply("edit", i % 2 == 0 ? without : whole);
      double derived = (System.nanoTime() - before) / 1e6;
      scene.snapshot(null);
      double painted = (System.nanoTime() - before) / 1e6;
      if (i >= WARM) {
        millis.add(painted);
        millis.add(derived);
      }
    }
    List<Double> painted = new ArrayList<>();
    List<Double> derived = new ArrayList<>();
    for (int i = 0; i < millis.size(); i += 2) {
      painted.add(millis.get(i));
      derived.add(millis.get(i + 1));
    }
    Collections.sort(painted);
    Collections.sort(derived);
    System.out.printf(
        Locale.ROOT,
        "%.1f %.1f %.1f%n",
        derived.get(TIMED / 2),
        painted.get(TIMED / 2),
        painted.get(TIMED * 99 / 100));
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }
}
