package saddlewright.prescription.pdf;

import java.io.IOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The type of one document: its faces, embedded as subsets of the glyphs used, each when it is
 * first used.
 *
 * <p>Widths are exact, in points, so that what is measured is what is printed. The font files are
 * shared by all documents; documents are therefore made one at a time.
 */
final class TypeFace {
  /** What stands for a character that no face has: seen by the reader, never dropped. */
  static final int SUBSTITUTE = 0x25A1;

  private final PDDocument document;
  private final Map<Cut, PDType0Font> embedded = new HashMap<>();

  TypeFace(PDDocument document) {
    this.document = document;
  }

  PDType0Font font(Face face, Weight weight) throws IOException {
    Cut cut = face.cut(weight);
    PDType0Font font = embedded.get(cut);
    if (font == null) {
      font = PDType0Font.load(document, cut.font(), true);
      embedded.put(cut, font);
    }
    return font;
  }

  /** Width of words that {@link #printable} has passed, in points at a size in points. */
  static double width(String text, Weight weight, double size) {
    return SetLine.of(text).width(weight) * size;
  }

  /**
   * The words with nothing that cannot be printed: composed, on one line, unknown characters
   * replaced by a visible square. Signs that only tell how letters join and which way words run are
   * kept for {@link SetLine}.
   */
  static String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(
            c -> {
              if (Character.isWhitespace(c) || Character.isISOControl(c)) {
                out.append(' ');
              } else if (Directions.isSign(c)) {
                out.appendCodePoint(c);
              } else if (Character.getType(c) != Character.FORMAT) {
                if (Face.LIBERATION_SANS.has(c)) {
                  out.appendCodePoint(c);
                } else {
                  out.append(inAFace(c));
                }
              }
            });
    return out.toString();
  }

  /** Whether a character has nothing that could stand for it but the square. */
  static boolean isMissing(int codePoint) {
    return !Face.LIBERATION_SANS.has(codePoint)
        && !Character.isWhitespace(codePoint)
        && !Character.isISOControl(codePoint)
        && Character.getType(codePoint) != Character.FORMAT
        && inAFace(codePoint).equals(Character.toString(SUBSTITUTE));
  }

  /** The character, or its parts where only they are in a face, or the square. */
  private static String inAFace(int c) {
    if (Face.of(c).isPresent()) {
      return Character.toString(c);
    }
    String parts = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD);
    boolean all = parts.codePoints().allMatch(p -> Face.of(p).isPresent());
    return all ? parts : Character.toString(SUBSTITUTE);
  }
}
