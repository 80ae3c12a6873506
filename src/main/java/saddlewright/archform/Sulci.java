package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The depth of the functional sulcus outside an arch, and the floor of the mouth inside it.
 *
 * <p>The plan unfolds them: a millimetre of charted depth below the gingival margin is a millimetre
 * outwards or inwards from it. Where nothing is charted the usual depth is drawn.
 */
final class Sulci {
  /** Usual depth from margin to functional sulcus, mm, in plan (from memory). */
  private static final double BUCCAL = 6;

  /** Usual depth from margin to the raised floor of the mouth in front and at the molars, mm. */
  private static final double FLOOR_FRONT = 9;

  private static final double FLOOR_BACK = 10;

  /** Distance of the line that bounds the vault from the margin, mm. */
  private static final double VAULT = 12;

  /** Inward lines meet on the midline at this depth at the front, mm from the incisal midpoint. */
  private static final double FOCUS = 19;

  private static final double FOCUS_SOFTNESS = 6;

  /** Most of the way to the midline that an inner line goes, so that both sides stay apart. */
  private static final double MOST_OF_WAY = 0.62;

  /** Half breadth of the vestibule and of the floor beside the pads, mm. */
  private static final double BESIDE_PAD_OUT = 7.2;

  private static final double BESIDE_PAD_IN = -5.6;

  private final ArchForm form;
  private final List<PlacedTooth> row;

  private Sulci(ArchForm form) {
    this.form = form;
    this.row = form.teeth().stream().filter(t -> !t.isClosed()).toList();
  }

  static Path buccal(ArchForm form) {
    return new Sulci(form).outer();
  }

  static Path lingual(ArchForm form) {
    return new Sulci(form).inner();
  }

  private Path outer() {
    Map<Tooth, Double> charted = form.chart().softTissues().buccalDepth();
    double[] depth = depths(charted, t -> BUCCAL);
    List<Point> knots = new ArrayList<>();
    knots.add(Pads.beside(form, Side.RIGHT, 0.75 * Pads.length(form), BESIDE_PAD_OUT));
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      Point rim = t.rim(t.degreesAcross(Face.BUCCAL));
      knots.add(rim.plus(t.outward().times(depth[i])));
    }
    knots.add(Pads.beside(form, Side.LEFT, 0.75 * Pads.length(form), BESIDE_PAD_OUT));
    List<Point> all = new ArrayList<>();
    all.add(Pads.end(form, Side.RIGHT));
    all.addAll(faired(knots, charted));
    all.add(Pads.end(form, Side.LEFT));
    return Path.smooth(all);
  }

  private Path inner() {
    boolean lower = form.arch() == Arch.LOWER;
    Map<Tooth, Double> charted = lower ? form.chart().softTissues().lingualDepth() : Map.of();
    double[] depth = depths(charted, t -> lower ? usualFloor(t) : VAULT);
    double along = 0.8 * Pads.length(form);
    double across = lower ? BESIDE_PAD_IN : -9;
    List<Point> knots = new ArrayList<>();
    knots.add(Pads.beside(form, Side.RIGHT, along, across));
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      Point margin = t.rim(t.degreesAcross(Face.LINGUAL));
      Vector in = margin.to(meeting(margin));
      double far = Math.min(depth[i], MOST_OF_WAY * in.length());
      knots.add(margin.plus(in.unit().times(far)));
    }
    knots.add(Pads.beside(form, Side.LEFT, along, across));
    return Path.smooth(faired(knots, charted));
  }

  private static double usualFloor(Tooth t) {
    return FLOOR_FRONT + (FLOOR_BACK - FLOOR_FRONT) * Math.min(1, (t.position() - 1) / 6.0);
  }

  /** The charted depths, and between them the usual one drawn towards the charted ones nearby. */
  private double[] depths(Map<Tooth, Double> charted, ToDoubleFunction<Tooth> usual) {
    double[] out = new double[row.size()];
    for (int i = 0; i < out.length; i++) {
      Tooth t = row.get(i).tooth();
      double pull = 0;
      double weights = 0;
      for (int k = 0; k < out.length; k++) {
        Tooth c = row.get(k).tooth();
        if (charted.containsKey(c)) {
          double w = nearness(i - k, 2.2);
          pull += w * (charted.get(c) - usual.applyAsDouble(c));
          weights += w;
        }
      }
      double share = weights == 0 ? 0 : pull / Math.max(1, weights);
      out[i] = charted.getOrDefault(t, usual.applyAsDouble(t) + share);
    }
    return out;
  }

  /** 1 at the place itself, falling off smoothly with the number of teeth from it. */
  private static double nearness(int teeth, double reach) {
    return Math.exp(-(teeth / reach) * (teeth / reach));
  }

  /** Where the inward line from a point meets the midline. */
  private static Point meeting(Point p) {
    return new Point(
        0, FOCUS + FOCUS_SOFTNESS * Math.log1p(Math.exp((p.y() - FOCUS) / FOCUS_SOFTNESS)));
  }

  /**
   * The knots without the waviness from tooth to tooth. Moving towards the neighbours' middle and
   * back again a little farther keeps the curve from shrinking (Taubin, SIGGRAPH 1995); then it is
   * drawn back to the knots whose depth is charted.
   */
  private List<Point> faired(List<Point> knots, Map<Tooth, Double> charted) {
    List<Point> now = knots;
    for (int round = 0; round < 8; round++) {
      double share = round % 2 == 0 ? 0.5 : -0.52;
      List<Point> next = new ArrayList<>(now);
      for (int i = 1; i + 1 < now.size(); i++) {
        next.set(i, now.get(i).towards(now.get(i - 1).midpoint(now.get(i + 1)), share));
      }
      now = next;
    }
    List<Point> out = new ArrayList<>(now);
    for (int i = 1; i + 1 < knots.size(); i++) {
      boolean own = charted.containsKey(row.get(i - 1).tooth());
      Vector pull = own ? now.get(i).to(knots.get(i)) : Vector.of(0, 0);
      double weights = 0;
      for (int k = 1; !own && k + 1 < knots.size(); k++) {
        if (charted.containsKey(row.get(k - 1).tooth())) {
          double w = nearness(i - k, 1.3);
          pull = pull.plus(now.get(k).to(knots.get(k)).times(w));
          weights += w;
        }
      }
      out.set(i, now.get(i).plus(pull.times(1 / Math.max(1, weights))));
    }
    return out;
  }
}
