package saddlewright.bench;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import com.sun.javafx.tk.quantum.QuantumToolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.ToDoubleFunction;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.desktop.EditorWindow;
import saddlewright.desktop.Worktable;

/**
 * Times edits of the largest demo case until their pixels are painted: every component of both
 * arches is taken away and put back in turn. An edit is followed by a pulse of the toolkit, as it
 * would be by the next frame, and by waiting for the renderer; what panels do later is not waited
 * for. Besides the time on the wall, which counts on a quiet machine, it takes the time of the
 * processor for the two threads at work.
 */
final class EditProbe {
  private static final int WARM = 80;
  private static final int TIMED = 160;

  /** From one edit to the next, so that the panels come to rest. */
  private static final Duration APART = Duration.millis(120);

  private record Timed(double wall, double derived, double frame, double painted) {
    double processor() {
      return derived + frame + painted;
    }
  }

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final Worktable table;
  private final Method pulse;
  private final List<Case> states = new ArrayList<>();
  private final List<Timed> timed = new ArrayList<>();

  EditProbe(EditorWindow window) throws ReflectiveOperationException {
    this.table = window.table();
    this.pulse = QuantumToolkit.class.getDeclaredMethod("pulse");
    pulse.setAccessible(true);
    Case whole = DemoCase.largest();
    for (Arch arch : Arch.values()) {
      for (Component c : whole.design(arch).components()) {
        states.add(whole.with(whole.design(arch).without(c.id())));
        states.add(whole);
      }
    }
  }

  void start() {
    table.lay(DemoCase.largest(), Optional.empty());
    after(Duration.seconds(2), () -> edit(0));
  }

  private static void after(Duration delay, Runnable action) {
    PauseTransition pause = new PauseTransition(delay);
    // Not within a pulse: an edit comes from an event.
    pause.setOnFinished(e -> Platform.runLater(action));
    pause.play();
  }

  private void edit(int n) {
    if (n == WARM + TIMED) {
      WindowProbe.finish(
          "%.1f %.1f %.1f %.1f %.1f %.1f %.1f",
          share(Timed::wall, 0.5),
          share(Timed::wall, 0.99),
          share(Timed::processor, 0.5),
          share(Timed::processor, 0.99),
          share(Timed::derived, 0.5),
          share(Timed::frame, 0.5),
          share(Timed::painted, 0.5));
      return;
    }
    long painter = Thread.currentThread().getId();
    long[] renderer = {0, 0};
    onRenderer(() -> renderer[0] = threads.getCurrentThreadCpuTime());
    long before = System.nanoTime();
    long own = threads.getThreadCpuTime(painter);
    table.apply("edit", states.get(n % states.size()));
    long derived = threads.getThreadCpuTime(painter);
    try {
      pulse.invoke(Toolkit.getToolkit());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
    long frame = threads.getThreadCpuTime(painter);
    onRenderer(() -> renderer[1] = threads.getCurrentThreadCpuTime());
    long after = System.nanoTime();
    if (n >= WARM) {
      timed.add(
          new Timed(
              (after - before) / 1e6,
              (derived - own) / 1e6,
              (frame - derived) / 1e6,
              (renderer[1] - renderer[0]) / 1e6));
    }
    after(APART, () -> edit(n + 1));
  }

  /** Waits until the renderer has done all it had to, and then this. */
  private static void onRenderer(Runnable action) {
    CountDownLatch done = new CountDownLatch(1);
    Toolkit.getToolkit()
        .addRenderJob(
            new RenderJob(
                () -> {
                  action.run();
                  done.countDown();
                }));
    try {
      done.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private double share(ToDoubleFunction<Timed> figure, double share) {
    double[] all = timed.stream().mapToDouble(figure).toArray();
    Arrays.sort(all);
    return all[(int) Math.min(all.length - 1, Math.floor(share * all.length))];
  }
}
