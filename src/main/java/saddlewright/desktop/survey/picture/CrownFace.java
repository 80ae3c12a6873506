package saddlewright.desktop.survey.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * The outline of a tooth seen from its buccal or lingual side, schematic: x towards mesial and y
 * towards the occlusal edge, millimetres, from the middle of the gingival margin.
 *
 * <p>Widths and heights are the charted ones or the published means; contacts lie at the junction
 * of the upper thirds at the front and in the middle at the back; cusps stand where the view from
 * above has them (own drawing).
 */
public final class CrownFace {
  private static final double GROOVE = 0.86;
  private static final double SHOULDER = 0.8;
  private static final double CANINE_SHOULDER = 0.73;

  private final Tooth tooth;
  private final Face face;
  private final double halfWidth;
  private final double halfNeck;
  private final double height;
  private final double root;
  private final List<Double> cusps;

  public CrownFace(ArchChart chart, PlacedTooth placed, Face face) {
    this.tooth = placed.tooth();
    this.face = face;
    ToothFindings f = chart.tooth(tooth);
    CrownSize mean = CrownSize.mean(tooth);
    double width = f.mesiodistal().orElse(mean.width());
    this.halfWidth = width / 2;
    this.halfNeck = mean.cervicalWidth() / mean.width() * width / 2;
    this.height = Math.max(1, f.crownHeight().orElse(mean.height()));
    this.root = mean.rootLength();
    this.cusps = cusps(placed);
  }

  public double halfWidth() {
    return halfWidth;
  }

  public double height() {
    return height;
  }

  /** Where cusp tips stand, as shares of the half width, from distal to mesial. */
  private List<Double> cusps(PlacedTooth placed) {
    boolean buccal = face == Face.BUCCAL;
    return placed.landmarks().entrySet().stream()
        .filter(e -> isCusp(e.getKey(), buccal))
        .map(Map.Entry::getValue)
        .map(p -> placed.centre().to(p).dot(placed.mesial()) / placed.halfWidth())
        .sorted(Comparator.naturalOrder())
        .toList();
  }

  private static boolean isCusp(String landmark, boolean buccal) {
    return switch (landmark) {
      case "cusp" -> true;
      case "B", "MB", "DB", "D" -> buccal;
      case "L", "ML", "DL" -> !buccal;
      default -> false;
    };
  }

  /** The crown down to the gingival margin. */
  public Outline crown() {
    List<Point> knots = new ArrayList<>();
    double mesialContact = (tooth.isAnterior() ? 0.72 : 0.62) * height;
    double distalContact = (tooth.isAnterior() ? 0.64 : 0.56) * height;
    knots.add(new Point(-halfNeck, 0));
    knots.add(new Point(-halfNeck - 0.55 * (halfWidth - halfNeck), 0.25 * height));
    knots.add(new Point(-halfWidth, distalContact));
    if (tooth.isIncisor()) {
      knots.add(new Point(-0.93 * halfWidth, 0.9 * height));
      knots.add(new Point(-0.78 * halfWidth, 0.985 * height));
      knots.add(new Point(0, height));
      knots.add(new Point(0.84 * halfWidth, height));
      knots.add(new Point(0.96 * halfWidth, 0.93 * height));
    } else {
      double shoulder = tooth.isCanine() ? CANINE_SHOULDER : SHOULDER;
      knots.add(new Point(-0.9 * halfWidth, Math.max(shoulder * height, distalContact)));
      for (int i = 0; i < cusps.size(); i++) {
        if (i > 0) {
          double middle = (cusps.get(i - 1) + cusps.get(i)) / 2;
          knots.add(new Point(middle * halfWidth, GROOVE * height));
        }
        double at = Math.max(-0.72, Math.min(0.72, cusps.get(i)));
        if (cusps.size() == 1) {
          // The arms of a single cusp run straight to its tip.
          knots.add(new Point((at - 0.34) * halfWidth, (tooth.isCanine() ? 0.88 : 0.9) * height));
        }
        knots.add(new Point(at * halfWidth, height));
        if (cusps.size() == 1) {
          knots.add(new Point((at + 0.34) * halfWidth, (tooth.isCanine() ? 0.88 : 0.9) * height));
        }
      }
      knots.add(new Point(0.92 * halfWidth, Math.max(shoulder * height, mesialContact)));
    }
    knots.add(new Point(halfWidth, mesialContact));
    knots.add(new Point(halfNeck + 0.55 * (halfWidth - halfNeck), 0.25 * height));
    knots.add(new Point(halfNeck, 0));
    knots.add(new Point(0, -0.08 * height));
    return Outline.smooth(knots);
  }

  /** The roots, from the margin down. */
  public List<Path> roots() {
    List<Path> out = new ArrayList<>();
    if (tooth.isMolar()) {
      for (int sign : new int[] {-1, 1}) {
        double tip = sign * 0.5 * halfNeck - 0.2 * halfNeck;
        out.add(
            Path.smooth(
                List.of(
                    new Point(sign * halfNeck, 0),
                    new Point(sign * halfNeck * 0.98, -0.4 * root),
                    new Point(tip + sign * 0.18 * halfNeck, -0.88 * root),
                    new Point(tip, -root),
                    new Point(tip - sign * 0.16 * halfNeck, -0.85 * root),
                    new Point(sign * 0.1 * halfNeck, -0.34 * root),
                    new Point(0, -0.27 * root))));
      }
    } else {
      out.add(
          Path.smooth(
              List.of(
                  new Point(halfNeck, 0),
                  new Point(halfNeck * 0.86, -0.4 * root),
                  new Point(halfNeck * 0.3, -0.9 * root),
                  new Point(-halfNeck * 0.12, -root),
                  new Point(-halfNeck * 0.42, -0.88 * root),
                  new Point(-halfNeck * 0.9, -0.4 * root),
                  new Point(-halfNeck, 0))));
    }
    return out;
  }

  /** The gingival margin, from a papilla to the next and on to the edges of the picture. */
  public List<Point> margin(double reach) {
    List<Point> out = new ArrayList<>();
    double papilla = 0.2 * CrownSize.mean(tooth).height();
    int n = 96;
    for (int i = 0; i <= n; i++) {
      double x = -reach + 2 * reach * i / n;
      double wave = Math.abs(Math.sin(Math.PI / 2 * x / (halfWidth + 0.2)));
      out.add(new Point(x, papilla * Math.pow(wave, 2.4)));
    }
    return out;
  }

  /** Lobes and grooves that show on the face. */
  public List<Path> details() {
    List<Path> out = new ArrayList<>();
    for (int i = 1; i < cusps.size(); i++) {
      double x = (cusps.get(i - 1) + cusps.get(i)) / 2 * halfWidth;
      out.add(
          Path.smooth(
              List.of(
                  new Point(x, GROOVE * height),
                  new Point(x * 0.95, 0.68 * height),
                  new Point(x * 0.9, 0.52 * height))));
    }
    if (tooth.isAnterior()) {
      for (double x : new double[] {-0.34, 0.34}) {
        out.add(
            Path.smooth(
                List.of(
                    new Point(x * halfWidth, 0.86 * height),
                    new Point(x * 0.95 * halfWidth, 0.66 * height))));
      }
    }
    return out;
  }
}
