package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * The upper edge of metal on the lingual surfaces of teeth: on the cingulum (or just above the
 * survey line of a back tooth) in the middle of each, up to the contact points between them.
 */
final class ScallopedEdge {
  private ScallopedEdge() {}

  /** The edge from the right end of the span to its left end. */
  static Path over(Ground ground, Span span) {
    List<Point> out = new ArrayList<>();
    span.teeth().stream()
        .map(ground::tooth)
        .filter(t -> !t.isClosed())
        .forEach(t -> out.addAll(scallop(ground, t)));
    if (out.isEmpty()) {
      PlacedTooth t = ground.tooth(span.first());
      return Path.of(t.at(-1, 0), t.at(1, 0));
    }
    return Path.through(out);
  }

  private static List<Point> scallop(Ground ground, PlacedTooth t) {
    // Distal first on the patient's right, since all runs from right to left.
    double sign = t.tooth().side() == Side.RIGHT ? -1 : 1;
    if (!ground.chart().stands(t.tooth())) {
      return List.of(t.at(sign * 0.9, -0.7), t.at(-sign * 0.9, -0.7));
    }
    // Shares of the half depth, from memory of how plates are drawn: cingula of front teeth lie
    // a good third from the lingual outline, survey lines of back teeth near it.
    boolean front = t.tooth().isAnterior();
    double middle = front ? -0.52 : -0.82;
    double peak = front ? -0.18 : -0.5;
    double shoulder = (middle * 3 + peak) / 4;
    return Path.smooth(
            List.of(
                t.at(sign * 0.98, peak),
                t.at(sign * 0.6, shoulder),
                t.at(0, middle),
                t.at(-sign * 0.6, shoulder),
                t.at(-sign * 0.98, peak)))
        .points();
  }
}
