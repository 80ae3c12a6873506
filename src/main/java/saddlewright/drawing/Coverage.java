package saddlewright.drawing;

import java.util.Arrays;
import java.util.List;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** How much of a drawing each place of it would hide, on a grid of small squares. */
final class Coverage {
  /** Side of a square, mm. */
  private static final double CELL = 0.7;

  /** Farthest place of a sign from the middle of its subject, mm. */
  private static final double FARTHEST = 17;

  /** What a millimetre of distance is worth, against one hidden square of ordinary weight. */
  private static final double DISTANCE = 1.6;

  private static final float TAKEN = 1000;
  private static final float LINE = 5;

  /** Price of a square of another sign that the leader would cross. */
  private static final double CROSSING = 4;

  private final Box box;
  private final int columns;
  private final int rows;
  private final float[] weight;
  private double[] sums = {};

  Coverage(Drawing drawing) {
    this.box = drawing.bounds();
    this.columns = (int) Math.ceil(box.width() / CELL);
    this.rows = (int) Math.ceil(box.height() / CELL);
    this.weight = new float[columns * rows];
    for (Mark m : drawing.marks()) {
      add(m);
    }
  }

  /** What a hidden square of a layer costs. */
  private static float cost(Layer layer) {
    return switch (layer) {
      case TISSUE -> 0;
      case ANATOMY -> 0.2f;
      case SADDLES -> 0.5f;
      case TEETH -> 2.5f;
      case FRAMEWORK -> 3;
      case COMPONENTS -> 6;
      case SURVEY -> 6;
      case LABELS, NOTES, CALLOUTS -> 30;
    };
  }

  private void add(Mark mark) {
    float cost = cost(mark.layer());
    if (cost == 0) {
      return;
    }
    if (mark instanceof Mark.Fill f && f.opacity() > 0) {
      f.outlines().forEach(o -> fill(o, cost));
    } else if (mark instanceof Mark.Stroke s) {
      s.paths().forEach(p -> trace(p, cost));
    } else if (mark instanceof Mark.Label l) {
      Box b = LeaderGround.box(l);
      rectangle(b.minX(), b.minY(), b.maxX(), b.maxY(), cost);
    }
  }

  /** The cheapest place for a sign of a radius, with words of a width to its right. */
  Point freeNear(Point anchor, double radius, double words) {
    integrate();
    Point best = anchor;
    double least = Double.POSITIVE_INFINITY;
    int reach = (int) (FARTHEST / CELL);
    int column = column(anchor.x());
    int row = row(anchor.y());
    for (int r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
      for (int c = Math.max(0, column - reach); c <= Math.min(columns - 1, column + reach); c++) {
        Point p = new Point(box.minX() + (c + 0.5) * CELL, box.minY() + (r + 0.5) * CELL);
        double distance = p.distanceTo(anchor);
        if (distance > FARTHEST
            || p.x() - radius < box.minX()
            || p.x() + radius + words > box.maxX()
            || p.y() - radius < box.minY()
            || p.y() + radius > box.maxY()) {
          continue;
        }
        double price = DISTANCE * distance + hidden(p, radius, words);
        if (price < least) {
          price += CROSSING * signsBetween(p, anchor);
        }
        if (price < least) {
          least = price;
          best = p;
        }
      }
    }
    return best;
  }

  /** Notes that a sign stands here, so that no other does. */
  void take(Point p, double radius, double words) {
    rectangle(p.x() - radius, p.y() - radius, p.x() + radius + words, p.y() + radius, TAKEN);
  }

  /** Notes that a leader runs here: a sign may cross it if there is no room elsewhere. */
  void takeLine(Point from, Point to) {
    trace(Path.of(from, to), LINE);
  }

  /** How many squares of other signs lie under the straight line. */
  private int signsBetween(Point from, Point to) {
    int steps = (int) Math.ceil(from.distanceTo(to) / CELL);
    int n = 0;
    for (int k = 1; k < steps; k++) {
      Point p = from.towards(to, k / (double) steps);
      if (weight[row(p.y()) * columns + column(p.x())] >= TAKEN) {
        n++;
      }
    }
    return n;
  }

  private double hidden(Point p, double radius, double words) {
    int left = column(p.x() - radius);
    int right = column(p.x() + radius + words);
    int top = row(p.y() - radius);
    int bottom = row(p.y() + radius);
    int w = columns + 1;
    return sums[(bottom + 1) * w + right + 1]
        - sums[top * w + right + 1]
        - sums[(bottom + 1) * w + left]
        + sums[top * w + left];
  }

  /** Sums over all rectangles from the corner, so that any rectangle is summed in four steps. */
  private void integrate() {
    int w = columns + 1;
    sums = new double[w * (rows + 1)];
    for (int r = 0; r < rows; r++) {
      double line = 0;
      for (int c = 0; c < columns; c++) {
        line += weight[r * columns + c];
        sums[(r + 1) * w + c + 1] = sums[r * w + c + 1] + line;
      }
    }
  }

  private void rectangle(double x0, double y0, double x1, double y1, float cost) {
    for (int r = row(y0); r <= row(y1); r++) {
      for (int c = column(x0); c <= column(x1); c++) {
        raise(r, c, cost);
      }
    }
  }

  private void trace(Path path, float cost) {
    List<Point> points = path.points();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      int steps = Math.max(1, (int) (a.distanceTo(b) / CELL));
      for (int k = 0; k <= steps; k++) {
        Point p = a.towards(b, k / (double) steps);
        if (box.contains(p)) {
          raise(row(p.y()), column(p.x()), cost);
        }
      }
    }
  }

  private void fill(Outline outline, float cost) {
    Box b = outline.box();
    List<Point> points = outline.points();
    double[] crossings = new double[points.size()];
    for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
      double y = box.minY() + (r + 0.5) * CELL;
      int n = 0;
      for (int i = 0; i < points.size(); i++) {
        Point p = points.get(i);
        Point q = points.get((i + 1) % points.size());
        if (p.y() > y != q.y() > y) {
          crossings[n++] = p.x() + (y - p.y()) / (q.y() - p.y()) * (q.x() - p.x());
        }
      }
      Arrays.sort(crossings, 0, n);
      for (int i = 0; i + 1 < n; i += 2) {
        for (int c = column(crossings[i]); c <= column(crossings[i + 1]); c++) {
          raise(r, c, cost);
        }
      }
    }
  }

  /** A square costs what the dearest thing in it costs. */
  private void raise(int row, int column, float cost) {
    int i = row * columns + column;
    weight[i] = Math.max(weight[i], cost);
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - box.minX()) / CELL)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - box.minY()) / CELL)));
  }
}
