package saddlewright.archform;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import saddlewright.dentition.DataTable;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;

/**
 * The occlusal outline of a tooth sort with its landmarks, in a frame where the crown fills −1 to 1:
 * x mesial, y buccal.
 */
record CrownShape(Outline outline, Map<String, Point> landmarks) {
  private static final Map<String, CrownShape> SHAPES = read();

  static CrownShape of(String key) {
    return SHAPES.get(key);
  }

  private static Map<String, CrownShape> read() {
    Map<String, List<Point>> controls = new HashMap<>();
    Map<String, Map<String, Point>> landmarks = new HashMap<>();
    for (Map<String, String> r : DataTable.rows("tooth-outlines")) {
      Point p =
          new Point(Double.parseDouble(r.get("m_norm")), Double.parseDouble(r.get("b_norm")));
      if (r.get("kind").equals("outline_ctrl")) {
        controls.computeIfAbsent(r.get("tooth_key"), k -> new ArrayList<>()).add(p);
      } else {
        landmarks
            .computeIfAbsent(r.get("tooth_key"), k -> new HashMap<>())
            .put(r.get("name"), p);
      }
    }
    Map<String, CrownShape> out = new HashMap<>();
    controls.forEach(
        (key, ctrl) ->
            out.put(key, new CrownShape(fitted(ctrl), Map.copyOf(landmarks.get(key)))));
    return out;
  }

  /** The spline through the control points, rescaled so that it reaches exactly −1 and 1. */
  private static Outline fitted(List<Point> controls) {
    // Enlarged before sampling so that the sampling step is fine compared with the crown.
    Outline big =
        Outline.smooth(controls.stream().map(p -> new Point(p.x() * 6, p.y() * 6)).toList());
    var box = big.box();
    return Outline.of(
        big.points().stream()
            .map(
                p ->
                    new Point(
                        2 * (p.x() - box.minX()) / box.width() - 1,
                        2 * (p.y() - box.minY()) / box.height() - 1))
            .toList());
  }
}
