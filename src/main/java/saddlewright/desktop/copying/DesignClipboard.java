package saddlewright.desktop.copying;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;

/** A design, or some components of one, as it lies on the clipboard. */
record DesignClipboard(ArchDesign design, boolean whole) {
  private static final DataFormat FORMAT = new DataFormat("application/x-saddlewright-design");

  /** The reference of what is no case. */
  private static final String NO_CASE = "SW-CLIPBOARD";

  private static final String SOME = "components";

  List<Component> components() {
    return design.components();
  }

  /** Puts it on the clipboard in our own format and as text; false when that took nothing. */
  boolean put() {
    String json =
        CaseCodec.toJson(
            Case.blank(NO_CASE).with(design).withIdentity(NO_CASE, whole ? "" : SOME, ""));
    ClipboardContent content = new ClipboardContent();
    // As bytes: a string of a format that the toolkit does not know would be wrapped by it.
    content.put(FORMAT, ByteBuffer.wrap(json.getBytes(StandardCharsets.UTF_8)));
    content.putString(json);
    return Clipboard.getSystemClipboard().setContent(content);
  }

  /** What lies there; empty when it is nothing of ours. A text that is a case is taken as well. */
  static Optional<DesignClipboard> get(Arch preferred) {
    Clipboard board = Clipboard.getSystemClipboard();
    Object own = board.getContent(FORMAT);
    String text = own == null ? board.getString() : text(own);
    if (text == null || !text.stripLeading().startsWith("{")) {
      return Optional.empty();
    }
    try {
      Case c = CaseCodec.fromJson(text, "clipboard");
      boolean some = c.reference().equals(NO_CASE) && c.title().equals(SOME);
      Arch other = preferred == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
      ArchDesign found =
          c.design(preferred).components().isEmpty() ? c.design(other) : c.design(preferred);
      return found.components().isEmpty()
          ? Optional.empty()
          : Optional.of(new DesignClipboard(found, !some));
    } catch (CaseFileException e) {
      // Some other text that begins like ours.
      return Optional.empty();
    }
  }

  private static String text(Object content) {
    if (content instanceof ByteBuffer bytes) {
      byte[] all = new byte[bytes.remaining()];
      bytes.duplicate().get(all);
      return new String(all, StandardCharsets.UTF_8);
    }
    return String.valueOf(content);
  }
}
