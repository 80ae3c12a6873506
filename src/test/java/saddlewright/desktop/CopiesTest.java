package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;

/** What the window puts on the clipboard, and the numbers of components on its sheet. */
class CopiesTest {
  private static final Path CASE = Path.of("demo-cases", "01-lower-class-1-rpi.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings.properties"));
    Case c = CaseStore.load(CASE);
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          return null;
        });
    w.settle();
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  @Test
  void the_drawing_is_copied_as_image_vectors_and_title() throws Exception {
    OnStage.run(
        () -> {
          new Copies(w.table()).drawing();
          Clipboard board = Clipboard.getSystemClipboard();
          Image image = board.getImage();
          DeskDrawing drawing = DeskDrawing.of(w.table());
          // 300 dots on an inch of 25.4 mm.
          assertThat(image.getWidth())
              .isEqualTo(Math.ceil(drawing.drawing().bounds().width() * 300 / 25.4));
          ByteBuffer svg = (ByteBuffer) board.getContent(Copies.SVG);
          svg.rewind();
          assertThat(StandardCharsets.UTF_8.decode(svg).toString())
              .startsWith("<svg")
              .endsWith("</svg>\n");
          assertThat(board.getString()).startsWith("Design sheet HTC-0101");
          return null;
        });
    assertThat(w.table().noticeProperty().get()).contains(Words.of("notice.drawing-copied"));
  }

  @Test
  void the_schedule_is_copied_as_plain_text() throws Exception {
    OnStage.run(
        () -> {
          new Copies(w.table()).schedule();
          assertThat(Clipboard.getSystemClipboard().getString())
              .contains("HTC-0101")
              .contains("LOWER ARCH")
              .doesNotContain("\t");
          return null;
        });
  }

  @Test
  void the_sheet_shows_the_numbers_of_components_on_request() throws Exception {
    long before = words("23");
    OnStage.run(
        () -> {
          w.table().numbersProperty().set(true);
          return null;
        });
    w.settle();
    assertThat(words("23")).isEqualTo(before + 1);
    assertThat(DeskDrawing.of(w.table()).svg(saddlewright.drawing.Background.PAPER))
        .contains(">23<");
  }

  private long words(String text) throws Exception {
    return OnStage.run(
        () ->
            w.find("sheet", javafx.scene.Node.class).lookupAll("*").stream()
                .filter(n -> n instanceof Text t && t.getText().equals(text))
                .count());
  }
}
