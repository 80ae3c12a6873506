package saddlewright.archform;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import saddlewright.dentition.DataTable;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * The crown of a tooth sort seen from above, in a frame where it fills −1 to 1: x mesial, y buccal.
 *
 * <p>Read once from the crown-shapes table and splined once; placing a crown only maps points.
 */
final class CrownShape {
  /** Splines are sampled at this enlargement so that their step is fine compared with the crown. */
  private static final double ENLARGED = 5;

  private static final int BEARINGS = 720;
  private static final Map<String, CrownShape> SHAPES = read();

  /** A line of the crown in the same frame. */
  record Line(CrownDetail.Kind kind, List<Point> points) {}

  private final List<Point> outline;
  private final Map<String, Point> landmarks;
  private final List<Line> lines;
  private final double[] radii;
  private final double mesialContact;
  private final double distalContact;

  private CrownShape(List<Point> outline, Map<String, Point> landmarks, List<Line> lines) {
    this.outline = List.copyOf(outline);
    this.landmarks = Map.copyOf(landmarks);
    this.lines = List.copyOf(lines);
    this.radii = radii(outline);
    this.mesialContact = heightOfExtreme(outline, 1);
    this.distalContact = heightOfExtreme(outline, -1);
  }

  static CrownShape of(String key) {
    return SHAPES.get(key);
  }

  List<Point> outline() {
    return outline;
  }

  Map<String, Point> landmarks() {
    return landmarks;
  }

  List<Line> lines() {
    return lines;
  }

  /** Buccolingual place of the mesial contact, as a share of the half depth. */
  double mesialContact() {
    return mesialContact;
  }

  /** Buccolingual place of the distal contact, as a share of the half depth. */
  double distalContact() {
    return distalContact;
  }

  /** Distance of the outline from the middle at a bearing in radians from mesial to buccal. */
  double radius(double bearing) {
    double u = bearing / (2 * Math.PI);
    double at = (u - Math.floor(u)) * BEARINGS;
    int i = (int) at;
    double next = radii[(i + 1) % BEARINGS];
    double here = radii[i % BEARINGS];
    return here + (next - here) * (at - i);
  }

  private static double[] radii(List<Point> outline) {
    double[] out = new double[BEARINGS];
    for (int i = 0; i < BEARINGS; i++) {
      double c = Math.cos(2 * Math.PI * i / BEARINGS);
      double s = Math.sin(2 * Math.PI * i / BEARINGS);
      for (int k = 0, j = outline.size() - 1; k < outline.size(); j = k++) {
        Point a = outline.get(j);
        Point b = outline.get(k);
        double ca = c * a.y() - s * a.x();
        double cb = c * b.y() - s * b.x();
        if ((ca <= 0) != (cb <= 0)) {
          Point p = a.towards(b, ca / (ca - cb));
          out[i] = Math.max(out[i], p.x() * c + p.y() * s);
        }
      }
    }
    return out;
  }

  private static double heightOfExtreme(List<Point> outline, int sign) {
    Point best = outline.get(0);
    for (Point p : outline) {
      if (sign * p.x() > sign * best.x()) {
        best = p;
      }
    }
    return best.y();
  }

  private static Map<String, CrownShape> read() {
    Map<String, List<Point>> outlines = new HashMap<>();
    Map<String, Map<String, Point>> landmarks = new HashMap<>();
    Map<String, Map<String, List<Point>>> lines = new HashMap<>();
    for (Map<String, String> r : DataTable.rows("crown-shapes")) {
      Point p = new Point(Double.parseDouble(r.get("m_norm")), Double.parseDouble(r.get("b_norm")));
      String key = r.get("tooth_key");
      switch (r.get("kind")) {
        case "outline" -> outlines.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
        case "landmark" ->
            landmarks.computeIfAbsent(key, k -> new HashMap<>()).put(r.get("name"), p);
        default ->
            lines
                .computeIfAbsent(key, k -> new LinkedHashMap<>())
                .computeIfAbsent(r.get("kind") + " " + r.get("name"), k -> new ArrayList<>())
                .add(p);
      }
    }
    Map<String, CrownShape> out = new HashMap<>();
    outlines.forEach(
        (key, controls) -> {
          List<Line> drawn = new ArrayList<>();
          lines.get(key).forEach((name, points) -> drawn.add(line(name, points)));
          out.put(key, new CrownShape(fitted(controls), landmarks.get(key), drawn));
        });
    return out;
  }

  private static Line line(String name, List<Point> points) {
    CrownDetail.Kind kind = CrownDetail.Kind.valueOf(name.split(" ")[0].toUpperCase(Locale.ROOT));
    List<Point> big = enlarged(points);
    List<Point> smooth =
        kind == CrownDetail.Kind.TABLE
            ? Outline.smooth(big).toPath().points()
            : Path.smooth(big).points();
    return new Line(
        kind, smooth.stream().map(p -> new Point(p.x() / ENLARGED, p.y() / ENLARGED)).toList());
  }

  /** The spline through the control points, rescaled so that it reaches exactly −1 and 1. */
  private static List<Point> fitted(List<Point> controls) {
    Outline big = Outline.smooth(enlarged(controls));
    Box box = big.box();
    return big.points().stream()
        .map(
            p ->
                new Point(
                    2 * (p.x() - box.minX()) / box.width() - 1,
                    2 * (p.y() - box.minY()) / box.height() - 1))
        .toList();
  }

  private static List<Point> enlarged(List<Point> points) {
    return points.stream().map(p -> new Point(p.x() * ENLARGED, p.y() * ENLARGED)).toList();
  }
}
