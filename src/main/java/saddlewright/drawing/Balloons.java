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
  private static final int TRIED = 36;

  /** How much dearer than the cheapest a choice may be. */
  private static final double RANGE = 100;

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

  private static final int ROUNDS = 8;

  /** How many others may have to give way for one number. */
  private static final int GIVING_WAY = 3;

  private static final double LEAST_GAIN = 1e-6;

  /** A number that stands this much dearer than it might is tried elsewhere. */
  private static final double WORTH_TRYING = 4;

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
      for (Point side : ends.of(layout.all().indexOf(note))) {
        double away = side.x() < ((Note) note.component()).x() ? -aside : aside;
        add(side.plus(new Vector(away, 0)), 0);
      }
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
    settle();
    List<PlacedCallout> out = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      out.add(new PlacedCallout(numbers.get(i), chosen[i].at(), Optional.of(chosen[i].end()), 1));
    }
    return out;
  }

  /** Settles the numbers in several orders, and lets those of the best exchange their places. */
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
      double sum = improve(order);
      if (sum < least - LEAST_GAIN) {
        least = sum;
        best = chosen.clone();
      }
    }
    System.arraycopy(best, 0, chosen, 0, best.length);
    boolean changed = true;
    for (int round = 0; round < ROUNDS && changed; round++) {
      changed = false;
      for (int i = 0; i < chosen.length; i++) {
        changed |= exchange(i);
      }
      improve(order);
    }
  }

  /** Lets each number take what is best for it until nothing changes; the price of all. */
  private double improve(Integer[] order) {
    boolean changed = true;
    for (int round = 0; round < ROUNDS && changed; round++) {
      changed = false;
      for (int i : order) {
        Choice before = chosen[i];
        chosen[i] = best(i);
        changed |= chosen[i] != before;
      }
    }
    double sum = 0;
    for (int i = 0; i < chosen.length; i++) {
      sum += chosen[i].price() + inTheWay(i, chosen[i]) / 2;
    }
    return sum;
  }

  private List<Choice> choices(Subject subject) {
    List<Laid> parts = layout.all();
    int part = -1;
    for (int k = 0; k < parts.size(); k++) {
      part =
          subject.component().filter(parts.get(k).component().id()::equals).isPresent() ? k : part;
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

  /** What is best for a number as the others stand. */
  private Choice best(int i) {
    Choice out = chosen[i] == null ? choices.get(i).get(0) : chosen[i];
    double least = out.price() + inTheWay(i, out) - LEAST_GAIN;
    for (Choice c : choices.get(i)) {
      if (c.price() >= least) {
        break;
      }
      double sum = c.price();
      for (int j = 0; j < chosen.length && sum < least; j++) {
        sum += j == i || chosen[j] == null ? 0 : between(c, chosen[j]);
      }
      if (sum < least) {
        least = sum;
        out = c;
      }
    }
    return out;
  }

  /** How much dearer a number stands than it might. */
  private double loss(int i) {
    return chosen[i].price() + inTheWay(i, chosen[i]) - choices.get(i).get(0).price();
  }

  /** Takes a choice from which some others have to give way, when that is better for all. */
  private boolean exchange(int i) {
    double own = loss(i);
    if (own < WORTH_TRYING) {
      return false;
    }
    double[] losses = new double[chosen.length];
    for (int j = 0; j < losses.length; j++) {
      losses[j] = j == i ? own : loss(j);
    }
    Choice[] before = chosen.clone();
    Choice[] best = before;
    double gained = LEAST_GAIN;
    double now = own + choices.get(i).get(0).price();
    int[] group = new int[GIVING_WAY];
    for (Choice c : choices.get(i)) {
      double possible = now - c.price();
      int n = 0;
      for (int j = 0; j < before.length && n <= GIVING_WAY; j++) {
        if (j != i && between(c, before[j]) > 0) {
          possible += losses[j];
          if (n < GIVING_WAY) {
            group[n] = j;
          }
          n++;
        }
      }
      if (n > GIVING_WAY || possible <= gained || c == before[i]) {
        continue;
      }
      double gain = now - c.price();
      chosen[i] = null;
      for (int k = 0; k < n; k++) {
        gain += chosen[group[k]].price() + inTheWay(group[k], chosen[group[k]]);
        chosen[group[k]] = null;
      }
      chosen[i] = c;
      for (int k = 0; k < n && gain > gained; k++) {
        chosen[group[k]] = best(group[k]);
        gain -= chosen[group[k]].price() + inTheWay(group[k], chosen[group[k]]);
      }
      if (gain > gained) {
        gained = gain;
        best = chosen.clone();
      }
      System.arraycopy(before, 0, chosen, 0, before.length);
    }
    System.arraycopy(best, 0, chosen, 0, best.length);
    return best != before;
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
