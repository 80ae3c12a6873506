package saddlewright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * Finds a place for the number of each component, around the arch or in the free room inside it, so
 * that leader lines are short, straight and apart.
 *
 * <p>Every number may take each of some places, with each of some ends on its component; each
 * choice has a price of its own, and two choices may stand in each other's way. From the cheapest
 * choices numbers give way to each other until nothing is gained by it.
 */
final class Balloons {
  /** Nearest places that a number is tried at. */
  private static final int TRIED = 32;

  /** How much dearer than the cheapest a choice may be. */
  private static final double RANGE = 70;

  /** Shortest line between a balloon and its end, mm. */
  private static final double SHORTEST = 1.5;

  /** Price of a place inside the arch, where the drawing is, against one around it. */
  private static final double INSIDE = 2;

  /** Most that a balloon may hide: more is no free room. */
  private static final double HIDDEN = 14;

  /** Farther apart than this, two choices leave each other alone, mm. */
  private static final double FAR = 2 * PlacedCallout.RADIUS + 0.3;

  private static final double SAME_PLACE = 400;
  private static final double CROSSED = 120;
  private static final double UNDER_BALLOON = 90;
  private static final double ON_END = 25;

  /** Distance that a leader keeps from another's balloon, mm. */
  private static final double CLEAR_OF_BALLOON = 0.5;

  /** Distance that a leader keeps from another's end, mm. */
  private static final double CLEAR_OF_END = 1.1;

  private static final int ROUNDS = 12;

  /** A place with an end; the box around both tells quickly what is far from what. */
  private record Choice(
      Point at, Point end, double price, double minX, double minY, double maxX, double maxY) {
    static Choice of(Point at, Point end, double price) {
      return new Choice(
          at,
          end,
          price,
          Math.min(at.x(), end.x()),
          Math.min(at.y(), end.y()),
          Math.max(at.x(), end.x()),
          Math.max(at.y(), end.y()));
    }

    boolean isFarFrom(Choice o) {
      return minX > o.maxX + FAR
          || o.minX > maxX + FAR
          || minY > o.maxY + FAR
          || o.minY > maxY + FAR;
    }
  }

  private final Layout layout;
  private final List<Callout> numbers;
  private final LeaderGround ground;
  private final LeaderEnds ends;
  private final List<Point> places = new ArrayList<>();
  private final List<Double> placePrices = new ArrayList<>();
  private final List<List<Choice>> choices = new ArrayList<>();
  private final Choice[] chosen;

  private Balloons(Layout layout, Drawing drawing, List<Callout> numbers) {
    this.layout = layout;
    this.numbers = numbers;
    this.chosen = new Choice[numbers.size()];
    List<Point> around = BalloonPlaces.around(layout.form(), numbers.size());
    Box box = Box.around(around).grown(PlacedCallout.RADIUS + CLEAR_OF_BALLOON);
    this.ground = new LeaderGround(layout, drawing, box.union(layout.form().box()));
    this.ends = new LeaderEnds(layout, ground, drawing);
    for (Point p : around) {
      add(p, ground.hidden(p, PlacedCallout.RADIUS));
    }
    for (Point p : BalloonPlaces.inside(layout.form())) {
      double hidden = ground.hidden(p, PlacedCallout.RADIUS + CLEAR_OF_BALLOON);
      if (hidden < HIDDEN) {
        add(p, INSIDE + hidden);
      }
    }
    for (Laid note : layout.all(Note.class)) {
      double aside = PlacedCallout.RADIUS + SHORTEST;
      List<Point> sides = ends.of(layout.all().indexOf(note));
      add(sides.get(0).minus(new Vector(aside, 0)), 0);
      add(sides.get(1).plus(new Vector(aside, 0)), 0);
    }
  }

  private void add(Point place, double price) {
    places.add(place);
    placePrices.add(price);
  }

  /** The numbers with their places, in the order given. */
  static List<PlacedCallout> of(Layout layout, Drawing drawing, List<Callout> numbers) {
    return numbers.isEmpty() ? List.of() : new Balloons(layout, drawing, numbers).placed();
  }

  private List<PlacedCallout> placed() {
    for (int i = 0; i < numbers.size(); i++) {
      choices.add(choices(numbers.get(i).subject()));
    }
    List<PlacedCallout> out = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      out.add(
          new PlacedCallout(
              numbers.get(i), chosen[i].at(), Optional.of(chosen[i].end()), 1));
    }
    return out;
  }

  /** Settles the numbers one after the other in several orders, and keeps the best of all. */
  private void settle() {
    Integer[] order = new Integer[chosen.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    Choice[] best = {};
    double least = Double.POSITIVE_INFINITY;
    Comparator<Integer> dearest = Comparator.comparingDouble(i -> -choices.get(i).get(0).price());
    for (Comparator<Integer> by :
        List.of(dearest, dearest.reversed(), Comparator.<Integer>naturalOrder())) {
      Arrays.sort(order, by);
      Arrays.fill(chosen, null);
      for (int i : order) {
        chosen[i] = choices.get(i).get(0);
        improve(i);
      }
      boolean changed = true;
      for (int round = 0; round < ROUNDS && changed; round++) {
        changed = false;
        for (int i : order) {
          changed |= improve(i);
        }
      }
      double sum = 0;
      for (int i = 0; i < chosen.length; i++) {
        sum += chosen[i].price() + inTheWay(i, chosen[i]) / 2;
      }
      if (sum < least - 1e-6) {
        least = sum;
        best = chosen.clone();
      }
    }
    System.arraycopy(best, 0, chosen, 0, best.length);
  }

  private List<Choice> choices(Subject subject) {
    List<Laid> parts = layout.all();
    int part = -1;
    for (int k = 0; k < parts.size(); k++) {
      part = subject.component().filter(parts.get(k).component().id()::equals).isPresent() ? k : part;
    }
    List<Point> on =
        part < 0 ? List.of(new Point(0, layout.form().box().centre().y())) : ends.of(part);
    int[] teeth =
        part < 0
            ? new int[0]
            : parts.get(part).component().teeth().stream().mapToInt(Enum::ordinal).toArray();
    List<Choice> out = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int place : nearest(on)) {
      Point at = places.get(place);
      Choice best = null;
      for (Point e : on) {
        double length = at.distanceTo(e);
        if (length < PlacedCallout.RADIUS + SHORTEST - 0.01) {
          continue;
        }
        double price = length + placePrices.get(place);
        double bound = Math.min(least + RANGE, best == null ? 1e9 : best.price());
        if (price < bound) {
          Point from = at.towards(e, PlacedCallout.RADIUS / length);
          price += ground.crossing(from, e, part, teeth, bound - price);
        }
        if (price < bound) {
          best = Choice.of(at, e, price);
        }
      }
      if (best != null) {
        out.add(best);
        least = Math.min(least, best.price());
      }
    }
    out.sort(Comparator.comparingDouble(Choice::price));
    return out;
  }

  /** The places near any of the ends, nearest first. */
  private int[] nearest(List<Point> ends) {
    long[] order = new long[places.size()];
    for (int k = 0; k < order.length; k++) {
      double near = Double.POSITIVE_INFINITY;
      for (Point e : ends) {
        near = Math.min(near, places.get(k).distanceTo(e));
      }
      order[k] = Math.round((near + placePrices.get(k)) * 1e4) << 10 | k;
    }
    Arrays.sort(order);
    int[] out = new int[Math.min(TRIED, order.length)];
    for (int k = 0; k < out.length; k++) {
      out[k] = (int) (order[k] & 1023);
    }
    return out;
  }

  /** Takes the choice that is best for a number and those that stand in its way. */
  private boolean improve(int i) {
    double now = inTheWay(i, chosen[i]) + chosen[i].price();
    Choice best = chosen[i];
    double least = now - 1e-6;
    int givesWay = -1;
    Choice other = null;
    Choice before = chosen[i];
    for (Choice c : choices.get(i)) {
      if (c.price() >= least) {
        break;
      }
      double sum = c.price();
      int blocker = -1;
      double blocked = 0;
      for (int j = 0; j < chosen.length && sum < now + SAME_PLACE * 2; j++) {
        if (j != i && chosen[j] != null) {
          double w = between(c, chosen[j]);
          sum += w;
          if (w > blocked) {
            blocked = w;
            blocker = j;
          }
        }
      }
      if (sum < least) {
        least = sum;
        best = c;
        givesWay = -1;
      }
      if (blocker >= 0 && sum - blocked < least) {
        // What the other costs now goes; what it would cost elsewhere comes.
        double saved = chosen[blocker].price() + inTheWay(blocker, chosen[blocker]) - between(chosen[blocker], before);
        Choice back = chosen[blocker];
        chosen[i] = c;
        for (Choice d : choices.get(blocker)) {
          if (sum - blocked - saved + d.price() >= least) {
            break;
          }
          double total = sum - blocked - saved + d.price() + inTheWay(blocker, d);
          if (total < least) {
            least = total;
            best = c;
            givesWay = blocker;
            other = d;
          }
        }
        chosen[i] = before;
        chosen[blocker] = back;
      }
    }
    if (best == before) {
      return false;
    }
    chosen[i] = best;
    if (givesWay >= 0) {
      chosen[givesWay] = other;
    }
    return true;
  }

  private double inTheWay(int i, Choice c) {
    double sum = 0;
    for (int j = 0; j < chosen.length; j++) {
      if (j != i && chosen[j] != null) {
        sum += between(c, chosen[j]);
      }
    }
    return sum;
  }

  /** What two choices cost by standing in each other's way. */
  private static double between(Choice a, Choice b) {
    if (a.isFarFrom(b)) {
      return 0;
    }
    if (a.at().distanceTo(b.at()) < FAR) {
      return SAME_PLACE;
    }
    double reach = PlacedCallout.RADIUS + CLEAR_OF_BALLOON;
    double sum = 0;
    if (LeaderLines.cross(a.at(), a.end(), b.at(), b.end())) {
      sum += CROSSED;
    }
    if (LeaderLines.distance(a.at(), a.end(), b.at()) < reach) {
      sum += UNDER_BALLOON;
    }
    if (LeaderLines.distance(b.at(), b.end(), a.at()) < reach) {
      sum += UNDER_BALLOON;
    }
    if (LeaderLines.distance(a.at(), a.end(), b.end()) < CLEAR_OF_END) {
      sum += ON_END;
    }
    if (LeaderLines.distance(b.at(), b.end(), a.end()) < CLEAR_OF_END) {
      sum += ON_END;
    }
    return sum;
  }
}
