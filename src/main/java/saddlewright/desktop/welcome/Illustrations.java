package saddlewright.desktop.welcome;

import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.paint.Color;
import javafx.scene.transform.Transform;
import javafx.stage.Window;
import saddlewright.desktop.sheet.Picture;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;
import saddlewright.layout.Layout;

/**
 * Makes pictures of designs, one after the other, so that the page they stand on can be read and
 * used meanwhile: laid out on a thread of their own, painted between two frames of the window.
 */
public final class Illustrations {
  /** Dots of the picture for each of the page, so that it is sharp on fine screens too. */
  private static final double FINENESS = 2;

  private static final long LONGEST_PAINTING_S = 5;

  /** A thread that has nothing to do goes. */
  private static final long IDLE_S = 2;

  private ExecutorService maker = maker();
  private final Map<ImageView, Palette> made = new WeakHashMap<>();

  private static ExecutorService maker() {
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            1,
            1,
            IDLE_S,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            work -> {
              Thread t = new Thread(work, "illustrations");
              t.setDaemon(true);
              t.setPriority(Thread.MIN_PRIORITY);
              return t;
            });
    pool.allowCoreThreadTimeOut(true);
    return pool;
  }

  /** Forgets what has been asked for and not been made. */
  public void begin() {
    maker.shutdownNow();
    maker = maker();
  }

  /** Has a picture made and put into a view, unless it is there in these colours. */
  public void show(Supplier<Layout> design, double width, Palette palette, ImageView view) {
    if (palette.equals(made.get(view))) {
      return;
    }
    view.setFitWidth(width);
    view.setPreserveRatio(true);
    make(design, width, palette, view);
  }

  private void make(Supplier<Layout> design, double width, Palette palette, ImageView view) {
    maker.execute(
        () -> {
          Layout layout = design.get();
          CountDownLatch painted = new CountDownLatch(1);
          Platform.runLater(
              () -> {
                try {
                  if (isSeen(view)) {
                    view.setImage(paint(layout, width, palette));
                    made.put(view, palette);
                  }
                } finally {
                  painted.countDown();
                }
              });
          try {
            painted.await(LONGEST_PAINTING_S, TimeUnit.SECONDS);
          } catch (InterruptedException e) {
            // Others are wanted in its place.
            Thread.currentThread().interrupt();
          }
        });
  }

  /** Nothing is painted for a window that has been closed meanwhile. */
  private static boolean isSeen(ImageView view) {
    return Optional.ofNullable(view.getScene())
        .map(Scene::getWindow)
        .filter(Window::isShowing)
        .isPresent();
  }

  private static Image paint(Layout layout, double width, Palette palette) {
    SnapshotParameters how = new SnapshotParameters();
    how.setTransform(Transform.scale(FINENESS, FINENESS));
    how.setFill(Color.web(palette.hex(Ink.PAPER)));
    return Picture.of(layout, width, palette).snapshot(how, null);
  }
}
