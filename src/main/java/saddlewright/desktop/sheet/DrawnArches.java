package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Draughtsman;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Mark;
import saddlewright.drawing.SheetDrawing;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/**
 * The drawings of the arches that were laid out last, so that only what changed is drawn anew, and
 * what did not is the very same mark.
 */
final class DrawnArches {
  /** Both arches as they are, and one or two as they would be. */
  private static final int KEPT = 4;

  private record Key(Layout layout, DrawingOptions options) {}

  private record Numbered(Key key, List<Callout> numbers) {}

  private final Draughtsman draughtsman = new Draughtsman();
  private final Map<Key, Drawing> drawn = new Kept<>();
  private final Map<Numbered, Drawing> numbered = new Kept<>();
  private final Map<Transform, Map<Mark, Mark>> placed = new Kept<>();

  /** The arches as a sheet wants them. */
  SheetDrawing.Arches on(DrawingOptions options, List<Callout> numbers) {
    return new SheetDrawing.Arches() {
      @Override
      public Drawing draw(Layout layout) {
        return of(layout, options, numbers);
      }

      @Override
      public Drawing place(Drawing drawing, Transform place) {
        return placed(drawing, place);
      }
    };
  }

  Drawing of(Layout layout, DrawingOptions options) {
    return drawn.computeIfAbsent(
        new Key(layout, options), k -> draughtsman.draw(k.layout(), k.options()));
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

  private Drawing placed(Drawing drawing, Transform place) {
    Map<Mark, Mark> before = placed.getOrDefault(place, Map.of());
    Map<Mark, Mark> now = new IdentityHashMap<>();
    List<Mark> marks = new ArrayList<>();
    for (Mark m : drawing.marks()) {
      Mark there = before.get(m);
      marks.add(now.computeIfAbsent(m, k -> there == null ? k.transformed(place) : there));
    }
    placed.put(place, now);
    return new Drawing(marks, place.apply(drawing.bounds()));
  }

  /** The few that were asked for last. */
  private static final class Kept<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1L;

    Kept() {
      super(8, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
      return size() > KEPT;
    }
  }
}
