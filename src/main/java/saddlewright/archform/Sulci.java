package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    double[] depth = new double[row.size()];
    double[] rim = new double[row.size()];
    boolean[] fixed = new boolean[row.size()];
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      depth[i] = charted.getOrDefault(t.tooth(), BUCCAL);
      fixed[i] = charted.containsKey(t.tooth());
      rim[i] = t.outward().dot(t.centre().to(t.rim(t.degreesAcross(Face.BUCCAL))));
    }
    double[] soft = softened(depth, fixed);
    List<Point> knots = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      knots.add(t.centre().plus(t.outward().times(rim[i] + soft[i])));
    }
    double back = Pads.length(form);
    knots.add(0, Pads.beside(form, Side.RIGHT, 0.75 * back, 7.2));
    knots.add(Pads.beside(form, Side.LEFT, 0.75 * back, 7.2));
    List<Point> all = new ArrayList<>();
    all.add(Pads.end(form, Side.RIGHT));
    all.addAll(faired(knots, fixed));
    all.add(Pads.end(form, Side.LEFT));
    return Path.smooth(all);
  }

  private Path inner() {
    boolean lower = form.arch() == Arch.LOWER;
    Map<Tooth, Double> charted = form.chart().softTissues().lingualDepth();
    double[] depth = new double[row.size()];
    boolean[] fixed = new boolean[row.size()];
    for (int i = 0; i < row.size(); i++) {
      Tooth t = row.get(i).tooth();
      double back = Math.min(1, (t.position() - 1) / 6.0);
      double usual = lower ? FLOOR_FRONT + (FLOOR_BACK - FLOOR_FRONT) * back : VAULT;
      depth[i] = lower ? charted.getOrDefault(t, usual) : usual;
      fixed[i] = lower && charted.containsKey(t);
    }
    double[] soft = softened(depth, fixed);
    List<Point> knots = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      PlacedTooth t = row.get(i);
      Point margin = t.rim(t.degreesAcross(Face.LINGUAL));
      Vector in = margin.to(meeting(margin));
      double far = Math.min(soft[i], MOST_OF_WAY * in.length());
      knots.add(margin.plus(in.unit().times(far)));
    }
    double back = 0.8 * Pads.length(form);
    knots.add(0, Pads.beside(form, Side.RIGHT, back, lower ? -5.6 : -9));
    knots.add(Pads.beside(form, Side.LEFT, back, lower ? -5.6 : -9));
    return Path.smooth(faired(knots, fixed));
  }

  /** Where the inward line from a point meets the midline. */
  private static Point meeting(Point p) {
    return new Point(
        0, FOCUS + FOCUS_SOFTNESS * Math.log1p(Math.exp((p.y() - FOCUS) / FOCUS_SOFTNESS)));
  }

  /**
   * The knots without the waviness from tooth to tooth; those of charted depths and the ends stay.
   * Moving towards the neighbours' middle and back again a little farther keeps the curve from
   * shrinking (Taubin, SIGGRAPH 1995).
   *
   * @param fixed for the knots but the first and last
   */
  private static List<Point> faired(List<Point> knots, boolean[] fixed) {
    List<Point> now = knots;
    for (int round = 0; round < 8; round++) {
      double share = round % 2 == 0 ? 0.5 : -0.52;
      List<Point> next = new ArrayList<>(now);
      for (int i = 1; i + 1 < now.size(); i++) {
        if (!fixed[i - 1]) {
          next.set(i, now.get(i).towards(now.get(i - 1).midpoint(now.get(i + 1)), share));
        }
      }
      now = next;
    }
    return now;
  }

  /** The values evened out between neighbours, charted ones kept as they are. */
  private static double[] softened(double[] v, boolean[] fixed) {
    double[] now = v.clone();
    for (int round = 0; round < 2; round++) {
      double[] next = now.clone();
      for (int i = 0; i < v.length; i++) {
        if (!fixed[i]) {
          double before = now[Math.max(0, i - 1)];
          double after = now[Math.min(v.length - 1, i + 1)];
          next[i] = (before + 2 * now[i] + after) / 4;
        }
      }
      now = next;
    }
    return now;
  }
}
