package saddlewright.archform;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/**
 * A crown (or the place of a lost one) on the arch form, in the frame of the arch, millimetres.
 *
 * <p>Directions around the crown are given in degrees of its own frame: 0 mesial, 90 buccal, 180
 * distal, 270 lingual. The frame is mirrored between the sides, so that whatever is built from it
 * is mirrored too.
 */
public final class PlacedTooth {
  private final Tooth tooth;
  private final Point centre;
  private final Vector mesial;
  private final Vector buccal;
  private final Vector outward;
  private final double halfWidth;
  private final double halfDepth;
  private final double reach;
  private final boolean closed;
  private final CrownShape shape;
  private final Once<Outline> outline = new Once<>(this::mappedOutline);
  private final Once<Region> region = new Once<>(() -> outline().toRegion());
  private final Once<List<CrownDetail>> details = new Once<>(this::mappedDetails);
  private final Once<Map<String, Point>> landmarks = new Once<>(this::mappedLandmarks);

  /**
   * A crown with its middle at the centre.
   *
   * @param mesial towards its mesial surface, turned with it when it is rotated
   * @param outward towards the cheek or lip across the arch, whatever its rotation; unit
   */
  PlacedTooth(
      Tooth tooth,
      Point centre,
      Vector mesial,
      Vector outward,
      double halfWidth,
      double halfDepth,
      boolean closed) {
    this.tooth = tooth;
    this.centre = centre;
    this.mesial = mesial.unit();
    // Buccal is a quarter turn from mesial, outwards: the turn differs between the two sides.
    Vector turned = this.mesial.quarterTurn();
    this.buccal = tooth.side() == Side.RIGHT ? turned.negated() : turned;
    this.outward = outward;
    this.halfWidth = halfWidth;
    this.halfDepth = halfDepth;
    // The corners of no crown stick out beyond the circle about its box.
    this.reach = Math.hypot(halfWidth, halfDepth);
    this.closed = closed;
    this.shape = CrownShape.of(tooth.key());
  }

  public Tooth tooth() {
    return tooth;
  }

  public Point centre() {
    return centre;
  }

  /** Unit vector towards the mesial contact. */
  public Vector mesial() {
    return mesial;
  }

  /** Unit vector towards the cheek or lip. */
  public Vector buccal() {
    return buccal;
  }

  /** Unit vector straight across the arch to the cheek or lip, whatever the tooth's rotation. */
  public Vector outward() {
    return outward;
  }

  /** Half the mesiodistal width in mm, as seen from above. */
  public double halfWidth() {
    return halfWidth;
  }

  /** Half the buccolingual depth in mm, as seen from above. */
  public double halfDepth() {
    return halfDepth;
  }

  /** Whether the space has been closed by drift, so that the crown has no width to speak of. */
  public boolean isClosed() {
    return closed;
  }

  /** The crown seen from above. */
  public Outline outline() {
    return outline.get();
  }

  /** The crown seen from above, as a region. */
  public Region region() {
    return region.get();
  }

  /** Fissures, ridges and edges. */
  public List<CrownDetail> details() {
    return details.get();
  }

  /** Cusp tips, fossae and edge ends by name. */
  public Optional<Point> landmark(String name) {
    return Optional.ofNullable(landmarks().get(name));
  }

  public Map<String, Point> landmarks() {
    return landmarks.get();
  }

  /** The point at shares of the half width (mesial positive) and half depth (buccal positive). */
  public Point at(double m, double b) {
    return centre.plus(mesial.times(m * halfWidth)).plus(buccal.times(b * halfDepth));
  }

  /** The unit vector at an angle of the crown's frame, in degrees. */
  public Vector direction(double degrees) {
    double r = Math.toRadians(degrees);
    return mesial.times(Math.cos(r)).plus(buccal.times(Math.sin(r)));
  }

  /** The angle of the crown's frame, 0 to 360 degrees, at which a point lies from the centre. */
  public double angleOf(Point p) {
    Vector v = centre.to(p);
    double deg = Math.toDegrees(Math.atan2(v.dot(buccal), v.dot(mesial)));
    return deg < 0 ? deg + 360 : deg;
  }

  /** The point of the crown's outline in a direction of its frame, in degrees. */
  public Point rim(double degrees) {
    double r = Math.toRadians(degrees);
    double m = Math.cos(r) / halfWidth;
    double b = Math.sin(r) / halfDepth;
    double far = shape.radius(Math.atan2(b, m)) / Math.hypot(m, b);
    return at(far * m, far * b);
  }

  /**
   * Whether a point lies on the crown or within a distance in mm of it, measured from its centre.
   */
  public boolean covers(Point p, double around) {
    double dx = p.x() - centre.x();
    double dy = p.y() - centre.y();
    double most = reach + around;
    if (dx * dx + dy * dy >= most * most) {
      return false;
    }
    return centre.distanceTo(p) < centre.distanceTo(rim(angleOf(p))) + around;
  }

  /**
   * The outline moved outwards by an offset in mm, from one direction to another in degrees of the
   * crown's frame; runs through rising angles when the second is the larger.
   */
  public Path rim(double fromDegrees, double toDegrees, double offset) {
    int n = Math.max(2, (int) Math.ceil(Math.abs(toDegrees - fromDegrees) / 4));
    List<Point> out = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      out.add(rimOut(fromDegrees + (toDegrees - fromDegrees) * i / n, offset));
    }
    return Path.smooth(out);
  }

  /**
   * The point of the outline in a direction, moved outwards along its normal by an offset in mm.
   */
  public Point rimOut(double degrees, double offset) {
    Point here = rim(degrees);
    Vector along = rim(degrees - 3).to(rim(degrees + 3));
    Vector n = along.unit().quarterTurn();
    if (n.dot(centre.to(here)) < 0) {
      n = n.negated();
    }
    return here.plus(n.times(offset));
  }

  /**
   * The mesial or distal contact: the most prominent place there, slightly buccal of the middle.
   */
  public Point contact(End end) {
    return end == End.MESIAL ? at(1, shape.mesialContact()) : at(-1, shape.distalContact());
  }

  /** Direction, in degrees of the crown's frame, straight across the arch to cheek or tongue. */
  public double degreesAcross(Face face) {
    return angleOf(centre.plus(face == Face.BUCCAL ? outward : outward.negated()));
  }

  /** Direction, in degrees, of the middle of a zone. */
  public static double degrees(Zone zone) {
    return switch (zone) {
      case MESIOBUCCAL -> 45;
      case MID_BUCCAL -> 90;
      case DISTOBUCCAL -> 135;
      case DISTOLINGUAL -> 225;
      case MID_LINGUAL -> 270;
      case MESIOLINGUAL -> 315;
    };
  }

  /** Direction, in degrees, of the middle of a face. */
  public static double degrees(Face face) {
    return face == Face.BUCCAL ? 90 : 270;
  }

  /** Direction, in degrees, of a mesial or distal surface. */
  public static double degrees(End end) {
    return end == End.MESIAL ? 0 : 180;
  }

  /** The middle of the seat of a rest at this site. */
  public Point seat(RestSite site) {
    return switch (site) {
      case MESIAL_OCCLUSAL -> at(0.62, 0);
      case DISTAL_OCCLUSAL -> at(-0.62, 0);
      case CINGULUM -> at(0, -0.5);
      case MESIAL_INCISAL -> at(0.62, 0.1);
      case DISTAL_INCISAL -> at(-0.62, 0.1);
    };
  }

  private Outline mappedOutline() {
    return Outline.of(mapped(shape.outline()));
  }

  private List<CrownDetail> mappedDetails() {
    return shape.lines().stream()
        .map(l -> new CrownDetail(l.kind(), Path.through(mapped(l.points()))))
        .toList();
  }

  private Map<String, Point> mappedLandmarks() {
    Map<String, Point> out = new TreeMap<>();
    shape.landmarks().forEach((name, p) -> out.put(name, at(p.x(), p.y())));
    return Collections.unmodifiableMap(out);
  }

  private List<Point> mapped(List<Point> points) {
    return points.stream().map(p -> at(p.x(), p.y())).toList();
  }
}
