package com.sun.javafx.font.freetype;

import com.sun.javafx.font.FontStrike;
import com.sun.javafx.font.PGFont;
import com.sun.javafx.text.GlyphLayout;
import com.sun.javafx.text.TextRun;

/**
 * Stands in for JavaFX's class of the same name where the Pango library is not installed, in tests
 * only: one glyph per character, left to right, with its own advance.
 */
class PangoGlyphLayout extends GlyphLayout {

  @Override
  public void layout(TextRun run, PGFont font, FontStrike strike, char[] text) {
    int length = run.getLength();
    int[] glyphs = new int[length];
    strike.getFontResource().getGlyphMapper().charsToGlyphs(run.getStart(), length, text, glyphs);
    float[] positions = new float[2 * length + 2];
    float x = 0;
    for (int i = 0; i < length; i++) {
      positions[2 * i] = x;
      x += strike.getCharAdvance(text[run.getStart() + i]);
    }
    positions[2 * length] = x;
    run.shape(length, glyphs, positions, null);
  }
}
