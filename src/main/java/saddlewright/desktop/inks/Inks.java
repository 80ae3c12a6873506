package saddlewright.desktop.inks;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;

/**
 * The colours that the user has chosen for ink roles, by desk; the program's own hold for the
 * others.
 *
 * @param light for the light desk, as #rrggbb
 * @param dark for the dark desk, as #rrggbb
 */
public record Inks(Map<Ink, String> light, Map<Ink, String> dark) {
  /** The program's own. */
  public static final Inks USUAL = new Inks(Map.of(), Map.of());

  public Inks {
    light = copy(light);
    dark = copy(dark);
  }

  private static Map<Ink, String> copy(Map<Ink, String> colours) {
    Map<Ink, String> out = new EnumMap<>(Ink.class);
    out.putAll(colours);
    return Collections.unmodifiableMap(out);
  }

  /** The colours of the sheet on a desk. */
  public Palette on(boolean darkDesk) {
    return darkDesk ? Palette.DARK.with(dark) : Palette.PAPER.with(light);
  }

  /**
   * The colours of the printed sheet: those of the light desk, on white, as far as what is drawn in
   * them can be seen there; the program's own for the others.
   */
  public Palette onPaper() {
    Map<Ink, String> printed = new EnumMap<>(Ink.class);
    printed.putAll(light);
    printed.remove(Ink.PAPER);
    boolean dropped = true;
    while (dropped) {
      InkCheck check = new InkCheck(Palette.PAPER.with(printed));
      dropped = printed.keySet().removeIf(ink -> !check.passes(ink));
    }
    return Palette.PAPER.with(printed);
  }
}
