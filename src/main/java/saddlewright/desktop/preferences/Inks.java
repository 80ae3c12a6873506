package saddlewright.desktop.preferences;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  /** A colour as people write it, such as #0A5B9F, in the way it is kept; empty when it is none. */
  static Optional<String> parse(String text) {
    String s = text.strip().toLowerCase(Locale.ROOT);
    return s.matches("#[0-9a-f]{6}") ? Optional.of(s) : Optional.empty();
  }
}
