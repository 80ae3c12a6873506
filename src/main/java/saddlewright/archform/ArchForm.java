package saddlewright.archform;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The arch of a charted mouth in the plane: every crown or empty place, gingival margins, ridges and
 * landmarks, in millimetres.
 *
 * <p>Crowns stand on the contact-line curve with contacts placed by successive chords equal to their
 * mesiodistal widths. All long curves run from the patient's right to the left.
 */
public final class ArchForm {
  /** Width in mm left to a place that drift has closed, so that it still has a frame. */
  private static final double CLOSED_WIDTH = 0.2;

  private final ArchChart chart;
  private final Map<Tooth, PlacedTooth> teeth;

  private ArchForm(ArchChart chart, Map<Tooth, PlacedTooth> teeth) {
    this.chart = chart;
    this.teeth = teeth;
  }

  public static ArchForm of(ArchChart chart) {
    ArchCurve curve = ArchCurve.mean(chart.arch());
    Map<Tooth, PlacedTooth> teeth = new EnumMap<>(Tooth.class);
    for (Side side : Side.values()) {
      double sign = side == Side.RIGHT ? -1 : 1;
      Point from = curve.at(0);
      for (int n = 1; n <= 8; n++) {
        Tooth tooth = Tooth.at(chart.arch(), side == Side.RIGHT ? 8 - n : 7 + n);
        ToothFindings f = chart.tooth(tooth);
        boolean closed = chart.isClosed(tooth);
        CrownSize size = CrownSize.mean(tooth);
        double width = closed ? CLOSED_WIDTH : f.mesiodistal().orElse(size.width());
        double depth = f.buccolingual().orElse(size.depth());
        Point to = curve.chordFrom(from.x(), width);
        Point centre = from.midpoint(to);
        Vector mesial = to.to(from);
        teeth.put(
            tooth,
            new PlacedTooth(
                tooth,
                new Point(sign * centre.x(), centre.y()),
                new Vector(sign * mesial.x(), mesial.y()),
                width / 2,
                depth / 2,
                closed));
        from = to;
      }
    }
    return new ArchForm(chart, teeth);
  }

  public Arch arch() {
    return chart.arch();
  }

  public ArchChart chart() {
    return chart;
  }

  public PlacedTooth tooth(Tooth tooth) {
    PlacedTooth t = teeth.get(tooth);
    if (t == null) {
      throw new IllegalArgumentException(tooth + " is not in the " + arch().code() + " arch");
    }
    return t;
  }

  /** All sixteen places from the patient's right to the left. */
  public List<PlacedTooth> teeth() {
    return Tooth.in(arch()).stream().map(teeth::get).toList();
  }

  /** Gingival margin along the inner faces of the teeth, and the inner border of bare ridges. */
  public Path lingualMargin() {
    return alongFaces(Face.LINGUAL, 0.3);
  }

  /** Gingival margin along the outer faces of the teeth, and the outer border of bare ridges. */
  public Path buccalMargin() {
    return alongFaces(Face.BUCCAL, 0.3);
  }

  /** Crest of the ridge, through the middle of every place, on to the pads or tuberosities. */
  public Path ridgeCrest() {
    List<Point> knots = new ArrayList<>();
    List<PlacedTooth> row = teeth();
    PlacedTooth firstTooth = row.get(0);
    PlacedTooth lastTooth = row.get(row.size() - 1);
    knots.add(firstTooth.centre().minus(firstTooth.mesial().times(12)));
    row.forEach(t -> knots.add(t.centre()));
    knots.add(lastTooth.centre().minus(lastTooth.mesial().times(12)));
    return Path.smooth(knots);
  }

  /** Depth of the functional sulcus outside the arch. */
  public Path buccalSulcus() {
    return alongFaces(Face.BUCCAL, 6);
  }

  /** Raised floor of the mouth (lower) or the line 12 mm inside the margins (upper). */
  public Path lingualSulcus() {
    return alongFaces(Face.LINGUAL, arch() == Arch.LOWER ? 8 : 12);
  }

  /** Retromolar pad (lower) or maxillary tuberosity (upper). */
  public Outline pad(Side side) {
    PlacedTooth eight = teeth.get(Tooth.at(arch(), side == Side.RIGHT ? 0 : 15));
    Point c = eight.centre().minus(eight.mesial().times(eight.halfWidth() + 5.5));
    return Outline.ellipse(c, 5.5, 4.2, eight.mesial().angle());
  }

  /** Junction of hard and soft palate (upper), from side to side. */
  public Path palateLimit() {
    double y =
        chart.softTissues().palateLimit().orElse(teeth.get(Tooth.T27).centre().y() + 8);
    return Path.smooth(List.of(new Point(-22, y + 2), new Point(0, y), new Point(22, y + 2)));
  }

  /** Box around all that belongs to the arch. */
  public Box box() {
    return buccalSulcus()
        .box()
        .union(pad(Side.RIGHT).box())
        .union(pad(Side.LEFT).box())
        .grown(2);
  }

  private Path alongFaces(Face face, double out) {
    List<Point> knots = new ArrayList<>();
    double dir = PlacedTooth.degrees(face);
    for (PlacedTooth t : teeth()) {
      if (!t.isClosed()) {
        knots.add(t.rimOut(dir, out));
      }
    }
    return Path.smooth(knots);
  }
}
