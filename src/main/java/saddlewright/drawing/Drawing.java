package saddlewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import saddlewright.geometry.Box;
import saddlewright.geometry.Transform;

/**
 * A list of marks in the order of painting, y downwards, in millimetres.
 *
 * @param bounds the part of the plane that it fills
 */
public record Drawing(List<Mark> marks, Box bounds) {
  public Drawing {
    List<Mark> sorted = new ArrayList<>(marks);
    sorted.sort(Comparator.comparing(Mark::layer));
    marks = List.copyOf(sorted);
  }

  public Drawing transformed(Transform t) {
    return new Drawing(marks.stream().map(m -> m.transformed(t)).toList(), t.apply(bounds));
  }

  public Drawing plus(Drawing other) {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(other.marks);
    return new Drawing(all, bounds.union(other.bounds));
  }
}
