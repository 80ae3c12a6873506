package saddlewright.desktop.survey.picture;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * The outline of a tooth seen from its mesial side, schematic: x towards buccal and y towards the
 * occlusal edge, millimetres, from the gingival margin.
 *
 * <p>The crest of curvature lies in the gingival third buccally and, at the back, in the middle
 * third lingually (Wheeler, from memory; own drawing).
 */
public final class CrownSide {
  private final Tooth tooth;
  private final double halfDepth;
  private final double halfNeck;
  private final double height;
  private final double root;

  public CrownSide(ArchChart chart, PlacedTooth placed) {
    this.tooth = placed.tooth();
    ToothFindings f = chart.tooth(tooth);
    CrownSize mean = CrownSize.mean(tooth);
    double depth = f.buccolingual().orElse(mean.depth());
    this.halfDepth = depth / 2;
    this.halfNeck = mean.cervicalDepth() / mean.depth() * depth / 2;
    this.height = Math.max(1, f.crownHeight().orElse(mean.height()));
    this.root = mean.rootLength();
  }

  public double halfDepth() {
    return halfDepth;
  }

  public double height() {
    return height;
  }

  public Outline crown() {
    List<Point> knots = new ArrayList<>();
    knots.add(new Point(0, 0.06 * height));
    knots.add(new Point(halfNeck, 0));
    knots.add(new Point(halfDepth, 0.28 * height));
    if (tooth.isAnterior()) {
      knots.add(new Point(0.8 * halfDepth, 0.62 * height));
      knots.add(new Point(0.42 * halfDepth, 0.93 * height));
      knots.add(new Point(0.3 * halfDepth, height));
      knots.add(new Point(0.14 * halfDepth, 0.95 * height));
      knots.add(new Point(-0.22 * halfDepth, 0.6 * height));
      knots.add(new Point(-0.86 * halfDepth, 0.3 * height));
    } else {
      knots.add(new Point(0.9 * halfDepth, 0.68 * height));
      knots.add(new Point(0.56 * halfDepth, height));
      knots.add(new Point(0, 0.78 * height));
      knots.add(new Point(-0.58 * halfDepth, 0.95 * height));
      knots.add(new Point(-0.92 * halfDepth, 0.72 * height));
      knots.add(new Point(-halfDepth, 0.46 * height));
    }
    knots.add(new Point(-halfNeck, 0));
    return Outline.smooth(knots);
  }

  public Path root() {
    return Path.smooth(
        List.of(
            new Point(halfNeck, 0),
            new Point(halfNeck * 0.86, -0.4 * root),
            new Point(halfNeck * 0.3, -0.9 * root),
            new Point(0, -root),
            new Point(-halfNeck * 0.32, -0.9 * root),
            new Point(-halfNeck * 0.88, -0.4 * root),
            new Point(-halfNeck, 0)));
  }
}
