package saddlewright.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * A part of the plane that may have several pieces and holes, in millimetres.
 *
 * <p>Set operations and offsets come from the JTS Topology Suite.
 */
public final class Region {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  public static final Region EMPTY = new Region(FACTORY.createPolygon());

  /** Corners that are tried before the boundaries are searched. */
  private static final int SOME = 24;

  private final Geometry shape;
  // Built when first needed; a second thread would only build an equal one.
  private volatile IndexedFacetDistance facets;

  private Region(Geometry shape) {
    this.shape = shape;
  }

  public static Region of(Outline outline) {
    Geometry polygon = FACTORY.createPolygon(ring(outline.points()));
    // A spline may touch itself; a zero-width offset makes the polygon valid without moving it.
    return new Region(polygon.isValid() ? polygon : polygon.buffer(0));
  }

  public static Region union(Collection<Region> regions) {
    List<Geometry> parts = regions.stream().filter(r -> !r.isEmpty()).map(r -> r.shape).toList();
    if (parts.isEmpty()) {
      return EMPTY;
    }
    return new Region(UnaryUnionOp.union(parts));
  }

  /** The band of the given full width (mm) along a path, with round ends. */
  public static Region band(Path path, double width) {
    return new Region(line(path).buffer(width / 2, 8));
  }

  /** The band of the given full width (mm) along a path, cut square at its ends. */
  public static Region squareBand(Path path, double width) {
    BufferParameters flat = new BufferParameters(8, BufferParameters.CAP_FLAT);
    return new Region(BufferOp.bufferOp(line(path), width / 2, flat));
  }

  public boolean isEmpty() {
    return shape.isEmpty();
  }

  public Region plus(Region other) {
    return isEmpty() ? other : other.isEmpty() ? this : new Region(overlay(other, 2));
  }

  public Region minus(Region other) {
    return isEmpty() || other.isEmpty() ? this : new Region(overlay(other, 3));
  }

  public Region intersection(Region other) {
    return isEmpty() || other.isEmpty() ? EMPTY : new Region(overlay(other, 1));
  }

  /** Grown (positive) or shrunk (negative) by a distance in mm, with round corners. */
  public Region grown(double by) {
    return new Region(shape.buffer(by, 6));
  }

  /** Inner corners rounded to the radius in mm; outer corners stay as they are. */
  public Region filleted(double radius) {
    return new Region(shape.buffer(radius, 6).buffer(-radius, 6));
  }

  /** Outer corners rounded to the radius in mm; anything narrower than twice the radius goes. */
  public Region rounded(double radius) {
    return new Region(shape.buffer(-radius, 6).buffer(radius, 6));
  }

  /** The same shape with points dropped that lie within the tolerance (mm) of the line. */
  public Region simplified(double tolerance) {
    return new Region(DouglasPeuckerSimplifier.simplify(shape, tolerance));
  }

  /** Area in square millimetres. */
  public double area() {
    return shape.getArea();
  }

  /** Whether the point lies inside or on the boundary. */
  public boolean contains(Point p) {
    Coordinate c = new Coordinate(p.x(), p.y());
    return shape.getEnvelopeInternal().contains(c)
        && SimplePointInAreaLocator.locate(c, shape) != Location.EXTERIOR;
  }

  public boolean intersects(Region other) {
    return shape.intersects(other.shape);
  }

  /** Smallest distance in mm, zero when they touch; infinite when one is empty. */
  public double distanceTo(Region other) {
    if (isEmpty() || other.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double apart = facets().distance(other.shape);
    return apart > 0 && (holdsCornerOf(other) || other.holdsCornerOf(this)) ? 0 : apart;
  }

  /** Whether they come as near as this, in mm; cheaper than asking how near they are. */
  public boolean isWithin(Region other, double distance) {
    if (isEmpty() || other.isEmpty()) {
      return false;
    }
    // Bodies that are joined mostly overlap, which a few of their corners tell without an index.
    if (holdsSomeCornerOf(other) || other.holdsSomeCornerOf(this)) {
      return true;
    }
    // The index knows boundaries only, so that one region inside the other is asked for besides.
    return facets().isWithinDistance(other.shape, distance)
        || holdsCornerOf(other)
        || other.holdsCornerOf(this);
  }

  private IndexedFacetDistance facets() {
    IndexedFacetDistance f = facets;
    if (f == null) {
      f = new IndexedFacetDistance(shape);
      facets = f;
    }
    return f;
  }

  private boolean holdsSomeCornerOf(Region other) {
    if (!(other.shape instanceof Polygon p)) {
      return false;
    }
    CoordinateSequence ring = p.getExteriorRing().getCoordinateSequence();
    var box = shape.getEnvelopeInternal();
    int stride = Math.max(1, ring.size() / SOME);
    for (int i = 0; i < ring.size(); i += stride) {
      Coordinate c = ring.getCoordinate(i);
      if (box.contains(c) && SimplePointInAreaLocator.locate(c, shape) != Location.EXTERIOR) {
        return true;
      }
    }
    return false;
  }

  private boolean holdsCornerOf(Region other) {
    return SimplePointInAreaLocator.locate(other.shape.getCoordinate(), shape) != Location.EXTERIOR;
  }

  /** Smallest distance in mm, zero when they touch. */
  public double distanceTo(Path path) {
    return isEmpty() ? Double.POSITIVE_INFINITY : DistanceOp.distance(shape, line(path));
  }

  public double distanceTo(Point p) {
    return isEmpty()
        ? Double.POSITIVE_INFINITY
        : DistanceOp.distance(shape, FACTORY.createPoint(new Coordinate(p.x(), p.y())));
  }

  /** The place in this region nearest to the point (the point itself when inside). */
  public Point nearest(Point p) {
    Coordinate c =
        DistanceOp.nearestPoints(shape, FACTORY.createPoint(new Coordinate(p.x(), p.y())))[0];
    return new Point(c.x, c.y);
  }

  /** The parts of a path that lie inside this region, in the order of travel. */
  public List<Path> inside(Path path) {
    LineString line = line(path);
    return shape.getEnvelopeInternal().intersects(line.getEnvelopeInternal())
        ? lines(shape.intersection(line))
        : List.of();
  }

  /** The parts of a path that lie outside this region, in the order of travel. */
  public List<Path> outside(Path path) {
    return lines(line(path).difference(shape));
  }

  /** The connected pieces, largest first. */
  public List<Region> pieces() {
    List<Region> out = new ArrayList<>();
    for (Polygon p : polygons()) {
      out.add(new Region(p));
    }
    out.sort((a, b) -> Double.compare(b.area(), a.area()));
    return out;
  }

  /** The outer boundaries of all pieces. */
  public List<Outline> outlines() {
    List<Outline> out = new ArrayList<>();
    for (Polygon p : polygons()) {
      out.add(outline(p.getExteriorRing()));
    }
    return out;
  }

  /** The boundaries of all holes. */
  public List<Outline> holes() {
    List<Outline> out = new ArrayList<>();
    for (Polygon p : polygons()) {
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        out.add(outline(p.getInteriorRingN(i)));
      }
    }
    return out;
  }

  /** All boundaries, outer ones and holes; fill them with the even-odd rule. */
  public List<Outline> boundaries() {
    List<Outline> out = new ArrayList<>(outlines());
    out.addAll(holes());
    return out;
  }

  public Box box() {
    if (isEmpty()) {
      throw new IllegalStateException("an empty region has no box");
    }
    var e = shape.getEnvelopeInternal();
    return new Box(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  /** A point well inside the largest piece. */
  public Point innerPoint() {
    var c = shape.getInteriorPoint().getCoordinate();
    return new Point(c.x, c.y);
  }

  public Region transformed(Transform t) {
    return new Region(
        shape.isEmpty()
            ? shape
            : new org.locationtech.jts.geom.util.AffineTransformation(
                    t.a(), t.c(), t.e(), t.b(), t.d(), t.f())
                .transform(shape));
  }

  private Geometry overlay(Region other, int op) {
    return OverlayNGRobust.overlay(shape, other.shape, op);
  }

  private List<Polygon> polygons() {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      if (shape.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        out.add(p);
      }
    }
    return out;
  }

  private static List<Path> lines(Geometry g) {
    List<Path> out = new ArrayList<>();
    if (g instanceof LineString l && !l.isEmpty()) {
      out.add(path(l));
    } else if (g instanceof MultiLineString || g.getNumGeometries() > 1) {
      for (int i = 0; i < g.getNumGeometries(); i++) {
        if (g.getGeometryN(i) instanceof LineString l && !l.isEmpty()) {
          out.add(path(l));
        }
      }
    }
    return out;
  }

  private static Path path(LineString l) {
    List<Point> pts = new ArrayList<>();
    for (Coordinate c : l.getCoordinates()) {
      pts.add(new Point(c.x, c.y));
    }
    return Path.through(pts);
  }

  private static Outline outline(LineString ring) {
    Coordinate[] cs = ring.getCoordinates();
    List<Point> pts = new ArrayList<>(cs.length - 1);
    for (int i = 0; i + 1 < cs.length; i++) {
      pts.add(new Point(cs[i].x, cs[i].y));
    }
    return Outline.of(pts);
  }

  private static LineString line(Path path) {
    return FACTORY.createLineString(
        path.points().stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
  }

  private static LinearRing ring(List<Point> points) {
    Coordinate[] cs = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      cs[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    cs[points.size()] = cs[0].copy();
    return FACTORY.createLinearRing(cs);
  }
}
