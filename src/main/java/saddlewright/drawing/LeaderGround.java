package saddlewright.drawing;

import java.util.Arrays;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ToothStatus;
import saddlewright.design.MajorConnector;
import saddlewright.design.Relief;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * What lies under each place of an arch, on a grid of small squares: crowns, components and words,
 * with what it costs a leader line to run over them and a balloon to stand on them.
 */
final class LeaderGround {
  /** Side of a square, mm. */
  static final double CELL = 0.5;

  /** Between two looks along a leader, mm. */
  private static final double STEP = 0.6;

  private static final float CROWN = 2.2f;
  private static final float LOST_PLACE = 0.4f;
  private static final float SMALL_PART = 3;
  private static final float CONNECTOR = 0.7f;
  private static final float BROAD_PART = 0.3f;
  private static final float WORDS = 60;
  private static final float LINE = 20;

  /** Leaders keep this far from words, mm. */
  private static final double AROUND_WORDS = 0.3;

  /** Height of capitals and figures as a share of the size of the type, with a little more. */
  private static final double CAPITALS = 0.8;

  private static final int DEPTHS = 3;
  private static final int WORTH_OF_BORDER = 1000;

  private final double minX;
  private final double minY;
  private final int columns;
  private final int rows;
  private final List<Laid> parts;
  private final byte[] crown;
  private final float[] price;
  private final long[] owners;
  private final float[] partPrices;
  private final boolean[] flips;

  LeaderGround(Layout layout, Drawing drawing, Box box) {
    double half = Math.max(-box.minX(), box.maxX());
    this.minX = -half;
    this.minY = box.minY();
    this.columns = 2 * (int) Math.ceil(half / CELL);
    this.rows = (int) Math.ceil(box.height() / CELL);
    this.parts = layout.all();
    this.crown = new byte[columns * rows];
    this.price = new float[columns * rows];
    this.flips = new boolean[(columns + 1) * rows];
    this.owners = new long[columns * rows];
    this.partPrices = new float[parts.size()];
    for (PlacedTooth t : layout.form().teeth()) {
      if (!t.isClosed()) {
        boolean there =
            layout.form().chart().stands(t.tooth())
                || layout.form().chart().tooth(t.tooth()).status() == ToothStatus.TO_BE_EXTRACTED;
        byte name = (byte) (there ? t.tooth().ordinal() + 1 : 0);
        fill(List.of(t.outline()), there ? CROWN : LOST_PLACE, 0, name);
      }
    }
    for (int k = 0; k < parts.size(); k++) {
      partPrices[k] = price(parts.get(k));
      fill(parts.get(k).body().boundaries(), partPrices[k], bit(k), (byte) 0);
    }
    for (Mark m : drawing.marks()) {
      if (m instanceof Mark.Label l) {
        words(l);
      } else if (m instanceof Mark.Stroke s && s.layer() == Layer.NOTES) {
        s.paths().forEach(this::line);
      }
    }
  }

  private static long bit(int part) {
    // Beyond 64 components some share a bit: a leader may then end where two of them lie.
    return 1L << (part & 63);
  }

  private static float price(Laid part) {
    if (part.component() instanceof Saddle || part.component() instanceof Relief) {
      return BROAD_PART;
    }
    return part.component() instanceof RetentionMesh
        ? BROAD_PART
        : part.component() instanceof MajorConnector ? CONNECTOR : SMALL_PART;
  }

  /** The part of the arch that words cover. */
  static Box box(Mark.Label l) {
    double wide = Lettering.width(l.text(), l.size(), l.bold());
    double start =
        switch (l.align()) {
          case START -> l.at().x();
          case MIDDLE -> l.at().x() - wide / 2;
          case END -> l.at().x() - wide;
        };
    double half = CAPITALS * l.size() / 2;
    return new Box(start, l.at().y() - half, start + wide, l.at().y() + half);
  }

  private void words(Mark.Label l) {
    Box b = box(l).grown(AROUND_WORDS);
    for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
      for (int c = column(b.minX()); c <= column(b.maxX()); c++) {
        price[r * columns + c] += WORDS;
      }
    }
  }

  /** A line that leads from a note: no other should cross it. */
  private void line(Path path) {
    for (Point p : path.sampled(CELL / 2)) {
      int i = row(p.y()) * columns + column(p.x());
      price[i] = Math.max(price[i], LINE);
    }
  }

  /**
   * What it costs to lead a line from one place to another, besides its length.
   *
   * @param most what would be too much: it is not counted beyond that
   */
  double crossing(Point from, Point to, int part, int[] ownTeeth, double most) {
    double length = from.distanceTo(to);
    int steps = Math.max(1, (int) (length / STEP));
    double dx = (to.x() - from.x()) / steps;
    double dy = (to.y() - from.y()) / steps;
    long own = part < 0 ? 0 : bit(part);
    double sum = 0;
    double enough = most * steps / length;
    // From the component outwards, where most of it lies.
    for (int k = steps - 1; k >= 0 && sum < enough; k--) {
      int c = (int) ((from.x() + (k + 0.5) * dx - minX) / CELL);
      int r = (int) ((from.y() + (k + 0.5) * dy - minY) / CELL);
      if (c < 0 || r < 0 || c >= columns || r >= rows) {
        continue;
      }
      int i = r * columns + c;
      float p = price[i];
      if (p > 0) {
        if ((owners[i] & own) != 0) {
          p -= partPrices[part];
        }
        if (crown[i] != 0 && isAmong(crown[i], ownTeeth)) {
          p -= CROWN / 2;
        }
        sum += p;
      }
    }
    return sum * length / steps;
  }

  private static boolean isAmong(byte name, int[] teeth) {
    for (int t : teeth) {
      if (t == name - 1) {
        return true;
      }
    }
    return false;
  }

  /** How much of the drawing a balloon hides here: the sum over its squares. */
  double hidden(Point at, double radius) {
    double sum = 0;
    for (int r = row(at.y() - radius); r <= row(at.y() + radius); r++) {
      for (int c = column(at.x() - radius); c <= column(at.x() + radius); c++) {
        sum += price[r * columns + c];
      }
    }
    return sum * CELL * CELL;
  }

  /**
   * The squares of a component that lead most surely to it: those that it shares with the fewest
   * others, and of them those farthest from its border.
   */
  int[] mostOwn(int part) {
    long bit = bit(part);
    Box b = parts.get(part).body().box();
    int left = column(b.minX());
    int right = column(b.maxX());
    int[] found = new int[(row(b.maxY()) - row(b.minY()) + 1) * (right - left + 1)];
    int n = 0;
    int best = Integer.MIN_VALUE;
    for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
      for (int c = left; c <= right; c++) {
        long o = owners[r * columns + c];
        if ((o & bit) != 0) {
          int worth = (isAllOf(r, c, 1, bit) ? WORTH_OF_BORDER : 0) - Long.bitCount(o) * DEPTHS;
          if (worth >= best - 2 && isAllOf(r, c, 3, o)) {
            worth += isAllOf(r, c, 6, o) ? 2 : 1;
          }
          if (worth > best) {
            best = worth;
            n = 0;
          }
          if (worth == best) {
            found[n++] = r * columns + c;
          }
        }
      }
    }
    return Arrays.copyOf(found, n);
  }

  /** Whether the squares at a distance on all sides have the same owners. */
  private boolean isAllOf(int r, int c, int distance, long bits) {
    return r >= distance
        && c >= distance
        && r < rows - distance
        && c < columns - distance
        && (owners[(r - distance) * columns + c] & bits) == bits
        && (owners[(r + distance) * columns + c] & bits) == bits
        && (owners[r * columns + c - distance] & bits) == bits
        && (owners[r * columns + c + distance] & bits) == bits
        && isAt(r, c, distance * 2 / 3, bits);
  }

  /** The same for the squares that lie cornerwise. */
  private boolean isAt(int r, int c, int distance, long bits) {
    return (owners[(r - distance) * columns + c - distance] & bits) == bits
        && (owners[(r - distance) * columns + c + distance] & bits) == bits
        && (owners[(r + distance) * columns + c - distance] & bits) == bits
        && (owners[(r + distance) * columns + c + distance] & bits) == bits;
  }

  /** How many components cover a place. */
  int covering(Point p) {
    return Long.bitCount(owners[row(p.y()) * columns + column(p.x())]);
  }

  Point middle(int square) {
    return new Point(
        minX + (square % columns + 0.5) * CELL, minY + (square / columns + 0.5) * CELL);
  }

  /** Adds to every square whose middle lies inside the outlines by the even-odd rule. */
  private void fill(List<Outline> outlines, float cost, long owner, byte name) {
    int top = rows;
    int bottom = -1;
    int left = columns;
    int right = -1;
    for (Outline o : outlines) {
      List<Point> points = o.points();
      Point p = points.get(points.size() - 1);
      for (Point q : points) {
        double low = Math.min(p.y(), q.y());
        double high = Math.max(p.y(), q.y());
        int from = Math.max(0, (int) Math.ceil((low - minY) / CELL - 0.5));
        int to = Math.min(rows, (int) Math.ceil((high - minY) / CELL - 0.5));
        for (int r = from; r < to; r++) {
          double y = minY + (r + 0.5) * CELL;
          double x = p.x() + (y - p.y()) / (q.y() - p.y()) * (q.x() - p.x());
          int c = (int) Math.ceil((x - minX) / CELL - 0.5);
          c = Math.max(0, Math.min(columns, c));
          flips[r * (columns + 1) + c] ^= true;
          left = Math.min(left, c);
          right = Math.max(right, c);
        }
        if (from < to) {
          top = Math.min(top, from);
          bottom = Math.max(bottom, to - 1);
        }
        p = q;
      }
    }
    for (int r = top; r <= bottom; r++) {
      boolean inside = false;
      for (int c = left; c <= right; c++) {
        int flip = r * (columns + 1) + c;
        inside ^= flips[flip];
        flips[flip] = false;
        if (inside && c < columns) {
          int i = r * columns + c;
          price[i] += cost;
          owners[i] |= owner;
          if (name != 0) {
            crown[i] = name;
          }
        }
      }
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - minX) / CELL)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - minY) / CELL)));
  }
}
