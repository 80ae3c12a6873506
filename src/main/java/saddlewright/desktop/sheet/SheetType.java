package saddlewright.desktop.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** The type face of the sheet, which the panels around it share. */
public final class SheetType {
  /** The face that comes with the program, as the style sheet names it. */
  private static final String OWN = "Liberation Sans";

  private static final String FAMILY = load();

  private SheetType() {}

  /** The face in a size of pixels or, scaled, of millimetres. */
  static Font font(boolean bold, double size) {
    return Font.font(FAMILY, bold ? FontWeight.BOLD : FontWeight.NORMAL, size);
  }

  /**
   * Name of the family; asking for it makes it known to style sheets, so that a window asks before
   * it is shown.
   */
  public static String family() {
    return FAMILY;
  }

  /** Whether the face that comes with the program could be loaded. */
  public static boolean isOwn() {
    return FAMILY.equals(OWN);
  }

  /** Loads the face that comes with the program; where that fails the platform's own stands in. */
  private static String load() {
    String family = Font.getDefault().getFamily();
    for (String weight : List.of("Regular", "Bold")) {
      String resource = "/liberation/LiberationSans-" + weight + ".ttf";
      try (InputStream in = SheetType.class.getResourceAsStream(resource)) {
        Font font = in == null ? null : Font.loadFont(in, 12);
        family = font == null ? family : font.getFamily();
      } catch (IOException e) {
        return family;
      }
    }
    return family;
  }
}
