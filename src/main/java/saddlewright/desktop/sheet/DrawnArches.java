package saddlewright.desktop.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.layout.Layout;

/**
 * The drawings of the arches that were laid out last, so that only a changed arch is drawn anew.
 */
final class DrawnArches {
  /** Both arches as they are, and one or two as they would be. */
  private static final int KEPT = 4;

  private record Key(Layout layout, DrawingOptions options) {}

  private final Map<Key, Drawing> drawn =
      new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Drawing> eldest) {
          return size() > KEPT;
        }
      };

  Drawing of(Layout layout, DrawingOptions options) {
    return drawn.computeIfAbsent(
        new Key(layout, options), k -> ArchDrawing.of(k.layout(), k.options()));
  }
}
