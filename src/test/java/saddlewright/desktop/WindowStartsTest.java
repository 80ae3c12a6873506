package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The window starts, is laid out and painted with no display. */
class WindowStartsTest {

  @BeforeAll
  static void startToolkit() throws Exception {
    OnStage.startToolkit();
  }

  @Test
  void shows_a_stage_with_painted_content() throws Exception {
    WritableImage image =
        OnStage.run(
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
    assertThat(OnStage.coloursOf(image)).isGreaterThan(2);
  }
}
