package saddlewright.classification;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * A run of neighbouring lost teeth of which at least one is replaced.
 *
 * @param span from its first to its last lost position; positions closed by drift inside it do not
 *     count, and second and third molars at a free end that are not replaced are left out
 *     (Applegate's rules 2 and 4)
 * @param replaced the positions that get an artificial tooth, in arch order
 * @param freeEnd no counted tooth stands behind it on a side
 * @param crossesMidline holds lost positions on both sides of the midline
 */
public record EdentulousArea(
    Span span, List<Tooth> replaced, boolean freeEnd, boolean crossesMidline) {
  public EdentulousArea {
    replaced = List.copyOf(replaced);
    if (replaced.isEmpty()) {
      throw new IllegalArgumentException("an area without a replaced tooth is no area: " + span);
    }
  }

  /** Number of the tooth from the midline (1 to 8) that lies farthest back in the area. */
  public int farthestBack() {
    return Math.max(span.first().position(), span.last().position());
  }
}
