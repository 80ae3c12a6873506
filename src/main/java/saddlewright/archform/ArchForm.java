package saddlewright.archform;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * The arch of a charted mouth in the plane: every crown or empty place, gingival margins, ridges
 * and landmarks, in millimetres.
 *
 * <p>Crowns stand on the contact-line curve with contacts placed by successive chords equal to
 * their mesiodistal widths. All long curves run from the patient's right to the left.
 */
public final class ArchForm {
  private static final double LABEL_OUTSIDE_SULCUS = 2;

  /** How far lingual of the contact a line angle lies, in degrees of the crown. */
  private static final double LINE_ANGLE = 25;

  private static final double LABEL_WIDER = 0.7;

  private final ArchChart chart;
  private final Map<Tooth, PlacedTooth> teeth;
  private final Once<Path> lingualMargin = new Once<>(() -> GingivalMargin.of(this, Face.LINGUAL));
  private final Once<Map<Tooth, Path>> lingualMargins = new Once<>(this::lingualMarginsOfTeeth);
  private final Once<Path> buccalMargin = new Once<>(() -> GingivalMargin.of(this, Face.BUCCAL));
  private final Once<Path> buccalSulcus = new Once<>(() -> Sulci.buccal(this));
  private final Once<Path> lingualSulcus = new Once<>(() -> Sulci.lingual(this));
  private final Once<Path> ridgeCrest = new Once<>(this::crestThroughPlaces);
  private final Once<Outline> padRight = new Once<>(() -> Pads.pad(this, Side.RIGHT));
  private final Once<Outline> padLeft = new Once<>(() -> Pads.pad(this, Side.LEFT));

  private ArchForm(ArchChart chart, Map<Tooth, PlacedTooth> teeth) {
    this.chart = chart;
    this.teeth = teeth;
  }

  /** The arch form of a chart; long curves are worked out when first asked for. */
  public static ArchForm of(ArchChart chart) {
    Map<Tooth, PlacedTooth> teeth = new EnumMap<>(Tooth.class);
    teeth.putAll(ToothRow.of(chart, Side.RIGHT));
    teeth.putAll(ToothRow.of(chart, Side.LEFT));
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
    return lingualMargin.get();
  }

  /** The part of it that belongs to one place, from line angle to line angle. */
  public Path lingualMargin(Tooth tooth) {
    return lingualMargins.get().get(tooth);
  }

  private Map<Tooth, Path> lingualMarginsOfTeeth() {
    Path margin = lingualMargin();
    Map<Tooth, Path> out = new EnumMap<>(Tooth.class);
    for (PlacedTooth t : teeth.values()) {
      double a = margin.arcNearest(t.rim(-LINE_ANGLE));
      double b = margin.arcNearest(t.rim(180 + LINE_ANGLE));
      out.put(t.tooth(), margin.between(Math.min(a, b), Math.max(a, b)));
    }
    return out;
  }

  /** Gingival margin along the outer faces of the teeth, and the outer border of bare ridges. */
  public Path buccalMargin() {
    return buccalMargin.get();
  }

  /** Crest of the ridge, through the middle of every place, on to the pads or tuberosities. */
  public Path ridgeCrest() {
    return ridgeCrest.get();
  }

  /**
   * Depth of the functional sulcus outside the arch, from behind one pad to behind the other; a
   * millimetre of charted depth is a millimetre in plan.
   */
  public Path buccalSulcus() {
    return buccalSulcus.get();
  }

  /** Raised floor of the mouth (lower) or the line 12 mm inside the margins (upper). */
  public Path lingualSulcus() {
    return lingualSulcus.get();
  }

  /** Retromolar pad (lower) or maxillary tuberosity (upper). */
  public Outline pad(Side side) {
    return side == Side.RIGHT ? padRight.get() : padLeft.get();
  }

  /** Hamular notches behind the tuberosities (upper); none in a lower arch. */
  public List<Path> hamularNotches() {
    return arch() == Arch.LOWER
        ? List.of()
        : List.of(Pads.hamularNotch(this, Side.RIGHT), Pads.hamularNotch(this, Side.LEFT));
  }

  /** Junction of hard and soft palate (upper), from hamular notch to hamular notch. */
  public Path palateLimit() {
    return Palate.limit(this);
  }

  /** Midline of the hard palate, from the papilla to the soft palate (upper). */
  public Optional<Path> raphe() {
    return Palate.raphe(this);
  }

  /** Incisive papilla (upper). */
  public Optional<Outline> papilla() {
    return Palate.papilla(this);
  }

  /** Palatal rugae, three on each side (upper). */
  public List<Path> rugae() {
    return Palate.rugae(this);
  }

  /** The two foveae palatinae just behind the hard palate (upper). */
  public List<Point> foveae() {
    return Palate.foveae(this);
  }

  /** Contour lines of the palatal vault (upper), none when it is charted as shallow. */
  public List<Path> vault() {
    return Palate.vault(this);
  }

  /** A charted torus; empty when it is not charted or belongs to the other arch. */
  public Optional<Outline> torus(Torus torus) {
    return Tori.of(this, torus);
  }

  /** Labial and buccal frena of every mouth, two borders each, where none is charted. */
  public List<Path> frena() {
    return Frena.ordinary(this);
  }

  /** Frena charted beside teeth: they come nearer to the margin. */
  public List<Path> chartedFrena() {
    return Frena.charted(this);
  }

  /** Lingual frenum on the midline (lower). */
  public Optional<Path> lingualFrenum() {
    return Frena.lingual(this);
  }

  /** Where the number of a tooth stands: on a curve just outside the sulcus, opposite the tooth. */
  public Point labelPlace(Tooth tooth) {
    PlacedTooth t = tooth(tooth);
    Point rim = t.rim(t.degreesAcross(Face.BUCCAL));
    Point depth = buccalSulcus().nearest(rim.plus(t.outward().times(4)));
    double out = Math.max(4, t.outward().dot(rim.to(depth)));
    // Numbers are wider than high, so that they need more room at the sides than in front.
    double room = LABEL_OUTSIDE_SULCUS + LABEL_WIDER * Math.abs(t.outward().x());
    return rim.plus(t.outward().times(out + room));
  }

  /** Box around all that belongs to the arch, with its tooth numbers. */
  public Box box() {
    return buccalSulcus()
        .box()
        .union(pad(Side.RIGHT).box())
        .union(pad(Side.LEFT).box())
        .grown(2 * (LABEL_OUTSIDE_SULCUS + LABEL_WIDER));
  }

  private Path crestThroughPlaces() {
    List<Point> knots = new ArrayList<>();
    knots.add(Pads.end(this, Side.RIGHT));
    knots.add(pad(Side.RIGHT).centroid());
    teeth().stream().filter(t -> !t.isClosed()).forEach(t -> knots.add(t.centre()));
    knots.add(pad(Side.LEFT).centroid());
    knots.add(Pads.end(this, Side.LEFT));
    return Path.smooth(knots);
  }
}
