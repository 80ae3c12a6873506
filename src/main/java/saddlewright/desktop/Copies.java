package saddlewright.desktop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import saddlewright.drawing.Background;
import saddlewright.prescription.ScheduleMail;

/** Puts what lies on the desk on the clipboard, for letters, slides and e-mail. */
final class Copies {
  /** The drawing as vectors; programs that know none take the image. */
  static final DataFormat SVG = new DataFormat("image/svg+xml");

  /** More than any program that pastes a picture has use for. */
  private static final double MOST_PIXELS = 2e7;

  private final Worktable table;

  Copies(Worktable table) {
    this.table = table;
  }

  /** The drawing as image and as vectors, with its title where neither can be pasted. */
  void drawing() {
    DeskDrawing drawing = DeskDrawing.of(table);
    try {
      byte[] png = drawing.pngWithin(Background.PAPER, MOST_PIXELS);
      ClipboardContent content = new ClipboardContent();
      content.putImage(new Image(new ByteArrayInputStream(png)));
      // As bytes: a string of a format that the toolkit does not know would be wrapped by it.
      content.put(
          SVG, ByteBuffer.wrap(drawing.svg(Background.PAPER).getBytes(StandardCharsets.UTF_8)));
      content.putString(drawing.title());
      put(content, Words.of("notice.drawing-copied"));
    } catch (IOException e) {
      say(Words.of("notice.not-copied"));
    }
  }

  /** The component schedule as text. */
  void schedule() {
    ClipboardContent content = new ClipboardContent();
    content.putString(ScheduleMail.of(table.assessment(), table.notationProperty().get()));
    put(content, Words.of("notice.schedule-copied"));
  }

  private void put(ClipboardContent content, String done) {
    boolean taken = Clipboard.getSystemClipboard().setContent(content);
    say(taken ? done : Words.of("notice.not-copied"));
  }

  private void say(String sentence) {
    table.noticeProperty().set(Optional.of(sentence));
  }
}
