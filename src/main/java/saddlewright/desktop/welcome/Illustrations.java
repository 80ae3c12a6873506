package saddlewright.desktop.welcome;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.paint.Color;
import javafx.scene.transform.Transform;
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

  private ExecutorService maker = maker();

  private static ExecutorService maker() {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread t = new Thread(work, "illustrations");
          t.setDaemon(true);
          t.setPriority(Thread.MIN_PRIORITY);
          return t;
        });
  }

  /** Forgets what has been asked for and not been made. */
  public void begin() {
    maker.shutdownNow();
    maker = maker();
  }

  /** Has a picture made and put into a view. */
  public void show(Supplier<Layout> design, double width, Palette palette, ImageView view) {
    view.setFitWidth(width);
    view.setPreserveRatio(true);
    make(design, width, palette, view::setImage);
  }

  /** Is done when everything asked for before has been made. */
  public void then(Runnable action) {
    maker.execute(() -> Platform.runLater(action));
  }

  private void make(
      Supplier<Layout> design, double width, Palette palette, Consumer<Image> receiver) {
    maker.execute(
        () -> {
          Layout layout = design.get();
          CountDownLatch painted = new CountDownLatch(1);
          Platform.runLater(
              () -> {
                try {
                  receiver.accept(paint(layout, width, palette));
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

  private static Image paint(Layout layout, double width, Palette palette) {
    SnapshotParameters how = new SnapshotParameters();
    how.setTransform(Transform.scale(FINENESS, FINENESS));
    how.setFill(Color.web(palette.hex(Ink.PAPER)));
    return Picture.of(layout, width, palette).snapshot(how, null);
  }
}
