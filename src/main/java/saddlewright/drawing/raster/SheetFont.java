package saddlewright.drawing.raster;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The type face of the sheet (Liberation Sans), the same that the PDF embeds. */
final class SheetFont {
  /** Measures glyphs without hinting, so that widths scale with the type. */
  static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private static final Font REGULAR = load("Regular");
  private static final Font BOLD = load("Bold");

  private SheetFont() {}

  static Font get(boolean bold) {
    return bold ? BOLD : REGULAR;
  }

  private static Font load(String weight) {
    String resource = "/liberation/LiberationSans-" + weight + ".ttf";
    try (InputStream in = SheetFont.class.getResourceAsStream(resource)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the font " + resource + " in this program is damaged", e);
    }
  }
}
