package saddlewright.desktop;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import saddlewright.desktop.preview.MeasuredScreens;

/** What the window remembers of screens: how large they really are. */
final class Printing implements MeasuredScreens {
  private static final String FILE = "printing.properties";
  private static final String SCREEN = "screen.";

  private final Remembered remembered;
  private final Map<String, String> kept = new TreeMap<>();

  Printing(Remembered remembered) {
    this.remembered = remembered;
    remembered.properties(FILE).forEach((k, v) -> kept.put((String) k, (String) v));
  }

  @Override
  public Optional<Double> pixelsPerMm(String screen) {
    try {
      return Optional.ofNullable(kept.get(SCREEN + screen))
          .map(Double::valueOf)
          .filter(v -> v > 1 && v < 20);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  @Override
  public void note(String screen, Optional<Double> pixelsPerMm) {
    keep(SCREEN + screen, pixelsPerMm.map(String::valueOf));
  }

  private void keep(String key, Optional<String> value) {
    value.ifPresentOrElse(v -> kept.put(key, v), () -> kept.remove(key));
    StringBuilder text = new StringBuilder();
    kept.forEach((k, v) -> text.append(k).append('=').append(v).append('\n'));
    remembered.write(FILE, text.toString());
  }
}
