package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The window starts, is laid out and painted with no display. */
class WindowStartsTest {

  @BeforeAll
  static void startToolkit() throws Exception {
    CompletableFuture<Void> started = new CompletableFuture<>();
    try {
      Platform.startup(() -> started.complete(null));
    } catch (IllegalStateException alreadyStarted) {
      started.complete(null);
    }
    started.get(60, TimeUnit.SECONDS);
    Platform.setImplicitExit(false);
  }

  @Test
  void shows_a_stage_with_painted_content() throws Exception {
    WritableImage image =
        onToolkitThread(
            () -> {
              Stage stage = new Stage();
              new EditorApp().start(stage);
              assertThat(stage.isShowing()).isTrue();
              assertThat(stage.getTitle()).startsWith("Saddlewright");
              WritableImage snapshot = stage.getScene().snapshot(null);
              stage.close();
              return snapshot;
            });

    assertThat(image.getWidth()).isGreaterThanOrEqualTo(800);
    assertThat(coloursOf(image)).isGreaterThan(2);
  }

  private static long coloursOf(WritableImage image) {
    int width = (int) image.getWidth();
    return java.util.stream.IntStream.range(0, width * (int) image.getHeight())
        .map(i -> image.getPixelReader().getArgb(i % width, i / width))
        .distinct()
        .count();
  }

  private static <T> T onToolkitThread(Supplier<T> action) throws Exception {
    CompletableFuture<T> result = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            result.complete(action.get());
          } catch (Throwable failure) {
            result.completeExceptionally(failure);
          }
        });
    return result.get(60, TimeUnit.SECONDS);
  }
}
