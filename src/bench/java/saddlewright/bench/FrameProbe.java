package saddlewright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.ScrollEvent;
import javafx.util.Duration;
import saddlewright.desktop.EditorWindow;
import saddlewright.desktop.sheet.SheetPane;

/**
 * Counts the frames of a second while the largest demo case is panned by the wheel and zoomed in
 * and out, a step in every frame. The toolkit begins no frame before the last has been painted, nor
 * more than sixty a second. On a machine that has other work the time of the processor tells more:
 * that of the busier of the two threads, of the events and of the renderer, is the least that a
 * frame takes on two processors.
 */
final class FrameProbe {
  private static final double SECONDS = 3;
  private static final int LEAST = 40;

  private final EditorWindow window;
  private final Scene scene;

  FrameProbe(EditorWindow window, Scene scene) {
    this.window = window;
    this.scene = scene;
  }

  void start() {
    window.table().lay(DemoCase.largest(), Optional.empty());
    PauseTransition settle = new PauseTransition(Duration.seconds(3));
    settle.setOnFinished(
        e -> {
          SheetPane sheet = (SheetPane) scene.lookup("#sheet");
          // The first run of each warms up.
          LongConsumer pan = n -> pan(sheet, n);
          LongConsumer zoom = n -> zoom(sheet, n);
          count(pan, a -> count(zoom, b -> count(pan, p -> count(zoom, z -> report(p, z)))));
        });
    settle.play();
  }

  private record Counted(double perSecond, double processor) {}

  private static void report(Counted pan, Counted zoom) {
    WindowProbe.finish(
        "%.1f %.1f %.1f %.1f",
        pan.perSecond, zoom.perSecond, 1000 / pan.processor, 1000 / zoom.processor);
  }

  private static void pan(Node sheet, long n) {
    double step = n / 30 % 2 == 0 ? 6 : -6;
    Event.fireEvent(
        sheet,
        new ScrollEvent(
            ScrollEvent.SCROLL,
            300,
            300,
            300,
            300,
            false,
            false,
            false,
            false,
            true,
            false,
            step,
            step,
            step,
            step,
            ScrollEvent.HorizontalTextScrollUnits.NONE,
            0,
            ScrollEvent.VerticalTextScrollUnits.NONE,
            0,
            2,
            null));
  }

  private static void zoom(SheetPane sheet, long n) {
    sheet.zoom(n / 30 % 2 == 0 ? 1.02 : 1 / 1.02);
  }

  private static void count(LongConsumer step, Consumer<Counted> then) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long events = Thread.currentThread().getId();
    long renderer =
        Thread.getAllStackTraces().keySet().stream()
            .filter(t -> t.getName().startsWith("QuantumRenderer"))
            .findFirst()
            .orElseThrow()
            .getId();
    long ofEvents = threads.getThreadCpuTime(events);
    long ofRenderer = threads.getThreadCpuTime(renderer);
    new AnimationTimer() {
      private long from;
      private long frames;

      @Override
      public void handle(long now) {
        from = from == 0 ? now : from;
        if (now - from >= SECONDS * 1e9 && frames >= LEAST) {
          stop();
          double busier =
              Math.max(
                  threads.getThreadCpuTime(events) - ofEvents,
                  threads.getThreadCpuTime(renderer) - ofRenderer);
          then.accept(new Counted(frames / ((now - from) / 1e9), busier / 1e6 / frames));
          return;
        }
        step.accept(frames++);
      }
    }.start();
  }
}
