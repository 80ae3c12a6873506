package saddlewright.prescription.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A weight of a face: its font file, shared by all documents. */
final class Cut {
  /** Letters up to here are looked up once; beyond are symbols and rare scripts. */
  private static final int REMEMBERED = 0x3000;

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  /** By code point; negative for a letter that is missing, not a number where not yet known. */
  private final float[] advances = new float[REMEMBERED];

  private Cut(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
    this.unitsPerEm = font.getUnitsPerEm();
    Arrays.fill(advances, Float.NaN);
  }

  /** The cut of a font file of the program. */
  static Cut read(String resource) {
    try (InputStream in = Cut.class.getResourceAsStream(resource)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Ligatures would save nothing here and cost half of the time.
      font.setEnableGsub(false);
      return new Cut(font);
    } catch (IOException e) {
      throw new UncheckedIOException("the font " + resource + " could not be read", e);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  boolean has(int codePoint) {
    return known(codePoint) >= 0;
  }

  /** Width of a letter as a share of the em; of the missing sign for one that is not there. */
  double advance(int codePoint) {
    float known = known(codePoint);
    return known >= 0 ? known : measured(0);
  }

  private float known(int codePoint) {
    if (codePoint >= REMEMBERED) {
      return lookedUp(codePoint);
    }
    float known = advances[codePoint];
    if (Float.isNaN(known)) {
      known = lookedUp(codePoint);
      advances[codePoint] = known;
    }
    return known;
  }

  private float lookedUp(int codePoint) {
    int glyph = glyphs.getGlyphId(codePoint);
    return glyph == 0 ? -1 : measured(glyph);
  }

  private float measured(int glyph) {
    try {
      return (float) (font.getAdvanceWidth(glyph) / unitsPerEm);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
