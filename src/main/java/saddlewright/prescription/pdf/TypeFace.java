package saddlewright.prescription.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one type face of the document, Liberation Sans, embedded as a subset of the glyphs used.
 *
 * <p>Widths are exact, in points, so that what is measured is what is printed. The parsed fonts are
 * shared by all documents; documents are therefore made one at a time.
 */
final class TypeFace {
  /** What stands for a character that the face does not have: seen by the reader, never dropped. */
  private static final int SUBSTITUTE = 0x25A1;

  private static final Map<Weight, Cut> CUTS = new EnumMap<>(Weight.class);

  static {
    for (Weight w : Weight.values()) {
      CUTS.put(w, Cut.load(w));
    }
  }

  private final Map<Weight, PDType0Font> embedded = new EnumMap<>(Weight.class);

  TypeFace(PDDocument document) throws IOException {
    for (Weight w : Weight.values()) {
      embedded.put(w, PDType0Font.load(document, CUTS.get(w).font, true));
    }
  }

  PDType0Font font(Weight weight) {
    return embedded.get(weight);
  }

  /** Width of words that {@link #printable} has passed, in points at a size in points. */
  static double width(String text, Weight weight, double size) {
    Cut cut = CUTS.get(weight);
    double sum = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      sum += cut.advance(c);
      i += Character.charCount(c);
    }
    return sum * size;
  }

  /**
   * The words with nothing that the face cannot print: composed, on one line, unknown characters
   * replaced by a visible square.
   */
  static String printable(String text) {
    Cut cut = CUTS.get(Weight.REGULAR);
    StringBuilder out = new StringBuilder(text.length());
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(
            c -> {
              if (Character.isWhitespace(c) || Character.isISOControl(c)) {
                out.append(' ');
              } else if (Character.getType(c) != Character.FORMAT) {
                out.appendCodePoint(cut.has(c) ? c : SUBSTITUTE);
              }
            });
    return out.toString();
  }

  /** A font file with the widths that have been asked for. */
  private static final class Cut {
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;
    private final Map<Integer, Double> advances = new ConcurrentHashMap<>();

    private Cut(TrueTypeFont font) throws IOException {
      this.font = font;
      this.glyphs = font.getUnicodeCmapLookup();
      this.unitsPerEm = font.getUnitsPerEm();
    }

    private static Cut load(Weight weight) {
      String resource = "/liberation/LiberationSans-" + weight.file() + ".ttf";
      try (InputStream in = TypeFace.class.getResourceAsStream(resource)) {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        // Ligatures would save nothing here and cost half of the time.
        font.setEnableGsub(false);
        return new Cut(font);
      } catch (IOException e) {
        throw new UncheckedIOException("the font " + resource + " could not be read", e);
      }
    }

    private boolean has(int codePoint) {
      return glyphs.getGlyphId(codePoint) != 0;
    }

    private double advance(int codePoint) {
      return advances.computeIfAbsent(
          codePoint,
          c -> {
            try {
              return font.getAdvanceWidth(glyphs.getGlyphId(c)) / unitsPerEm;
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
  }
}
