package saddlewright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.desktop.EditorWindow;
import saddlewright.desktop.Worktable;

/**
 * Takes the memory of a window after an hour's worth of edits, one a second, made as fast as they
 * can be: parts of the largest demo case taken away, put back and undone at random. All of them
 * stay in the history. The figures are the live heap, after the collector has run, and the resident
 * set of the process.
 */
final class MemoryProbe {
  private static final int EDITS = 3600;
  private static final int AT_ONCE = 5;

  private final Worktable table;
  private final Case whole = DemoCase.largest();
  private final Random random = new Random(20261128);
  private int done;

  MemoryProbe(EditorWindow window) {
    this.table = window.table();
  }

  void start() {
    table.lay(whole, Optional.empty());
    edit();
  }

  private void edit() {
    for (int i = 0; i < AT_ONCE; i++) {
      Case now = table.current();
      Arch arch = Arch.values()[random.nextInt(2)];
      List<Component> parts = new ArrayList<>(whole.design(arch).components());
      Component part = parts.get(random.nextInt(parts.size()));
      ArchDesign design = now.design(arch);
      if (random.nextInt(6) == 0) {
        table.undo();
      } else {
        table.apply(
            "edit " + done,
            now.with(
                design.find(part.id()).isPresent()
                    ? design.without(part.id())
                    : design.plus(part)));
      }
      done++;
    }
    if (done < EDITS) {
      Platform.runLater(this::edit);
    } else {
      afterAWhile();
    }
  }

  /** Reports when the panels have come to rest. */
  static void afterAWhile() {
    PauseTransition pause = new PauseTransition(Duration.seconds(3));
    pause.setOnFinished(
        e -> {
          for (int i = 0; i < 4; i++) {
            System.gc();
          }
          long live = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
          WindowProbe.finish("%.1f %.1f", live / 1e6, resident());
        });
    pause.play();
  }

  /** Megabytes of the process that are in memory; zero where the system does not tell. */
  private static double resident() {
    try {
      return Files.readAllLines(Path.of("/proc/self/status")).stream()
          .filter(l -> l.startsWith("VmRSS:"))
          .mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")) * 1024 / 1e6)
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }
}
