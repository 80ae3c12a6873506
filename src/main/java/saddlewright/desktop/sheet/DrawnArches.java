package saddlewright.desktop.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Callout;
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

  private record Numbered(Key key, List<Callout> numbers) {}

  private final Map<Key, Drawing> drawn = new Kept<>();
  private final Map<Numbered, Drawing> numbered = new Kept<>();

  Drawing of(Layout layout, DrawingOptions options) {
    return drawn.computeIfAbsent(
        new Key(layout, options), k -> ArchDrawing.of(k.layout(), k.options()));
  }

  /** The same with those of the numbers that belong to the arch. */
  Drawing of(Layout layout, DrawingOptions options, List<Callout> numbers) {
    List<Callout> here =
        numbers.stream().filter(n -> n.subject().arch() == layout.form().arch()).toList();
    Drawing bare = of(layout, options);
    return here.isEmpty()
        ? bare
        : numbered.computeIfAbsent(
            new Numbered(new Key(layout, options), here),
            k -> ArchDrawing.numbered(layout, bare, here));
  }

  /** The few that were asked for last. */
  private static final class Kept<K> extends LinkedHashMap<K, Drawing> {
    private static final long serialVersionUID = 1L;

    Kept() {
      super(8, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, Drawing> eldest) {
      return size() > KEPT;
    }
  }
}
