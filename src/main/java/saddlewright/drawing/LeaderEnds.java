package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Component;
import saddlewright.design.Note;
import saddlewright.design.RetentionMesh;
import saddlewright.geometry.Box;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * Where on a component its leader line may end: spread over it, at places that it shares with as
 * few others as can be.
 */
final class LeaderEnds {
  private static final int MOST = 5;

  /** Ends closer together than this would not differ, mm. */
  private static final double APART = 1.2;

  private static final double ALONG_LINES = 0.8;

  /** From words to a leader beside them, mm. */
  private static final double BESIDE_WORDS = 0.6;

  private final Layout layout;
  private final LeaderGround ground;
  private final Drawing drawing;

  LeaderEnds(Layout layout, LeaderGround ground, Drawing drawing) {
    this.layout = layout;
    this.ground = ground;
    this.drawing = drawing;
  }

  /** The ends that may be chosen; at least one. */
  List<Point> of(int part) {
    Laid laid = layout.all().get(part);
    boolean strands =
        laid.component() instanceof RetentionMesh m && m.form() != RetentionMesh.Form.MESH;
    if (!laid.body().isEmpty() && !strands) {
      int[] squares = ground.mostOwn(part);
      if (squares.length == 0) {
        return List.of(laid.body().innerPoint());
      }
      List<Point> points = new ArrayList<>(squares.length);
      for (int s : squares) {
        points.add(ground.middle(s));
      }
      return spread(points);
    }
    if (laid.component() instanceof Note) {
      return written(laid.component());
    }
    List<Point> onLines = onLines(laid);
    return onLines.isEmpty() ? written(laid.component()) : spread(onLines);
  }

  /** Points of the lines of a component, off its ends, where fewest others lie. */
  private List<Point> onLines(Laid laid) {
    List<Path> lines = new ArrayList<>(laid.details());
    if (lines.isEmpty()) {
      laid.centreline().ifPresent(lines::add);
    }
    List<Point> out = new ArrayList<>();
    int fewest = Integer.MAX_VALUE;
    for (Path line : lines) {
      int steps = Math.max(2, (int) Math.ceil(line.length() / ALONG_LINES));
      for (int k = 1; k < steps; k++) {
        Point p = line.at(line.length() * k / steps);
        int others = ground.covering(p);
        if (others < fewest) {
          fewest = others;
          out.clear();
        }
        if (others == fewest) {
          out.add(p);
        }
      }
    }
    return out;
  }

  /** Beside the words by which a component is drawn; else on the teeth that it names. */
  private List<Point> written(Component component) {
    Optional<Box> words = Optional.empty();
    for (Mark m : drawing.marks()) {
      if (m instanceof Mark.Label l
          && l.subject().flatMap(s -> s.component()).filter(component.id()::equals).isPresent()) {
        Box b = LeaderGround.box(l);
        words = Optional.of(words.map(b::union).orElse(b));
      }
    }
    if (words.isPresent()) {
      Box b = words.get();
      double y = b.centre().y();
      return List.of(new Point(b.minX() - BESIDE_WORDS, y), new Point(b.maxX() + BESIDE_WORDS, y));
    }
    return component.teeth().isEmpty()
        ? List.of(new Point(0, layout.form().box().centre().y()))
        : List.of(layout.form().tooth(component.teeth().get(0)).centre());
  }

  /** A few of the points, far from each other; first the one nearest to their middle. */
  private static List<Point> spread(List<Point> points) {
    Vector sum = new Vector(0, 0);
    for (Point p : points) {
      sum = sum.plus(Point.ORIGIN.to(p));
    }
    Point middle = Point.ORIGIN.plus(sum.times(1.0 / points.size()));
    double[] distance = new double[points.size()];
    int next = 0;
    for (int i = 0; i < distance.length; i++) {
      distance[i] = Double.POSITIVE_INFINITY;
      next = points.get(i).distanceTo(middle) < points.get(next).distanceTo(middle) ? i : next;
    }
    List<Point> out = new ArrayList<>();
    while (out.size() < MOST) {
      Point taken = points.get(next);
      out.add(taken);
      next = 0;
      for (int i = 0; i < distance.length; i++) {
        distance[i] = Math.min(distance[i], points.get(i).distanceTo(taken));
        next = distance[i] > distance[next] ? i : next;
      }
      if (distance[next] < APART) {
        break;
      }
    }
    return out;
  }
}
