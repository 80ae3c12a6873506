package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Saddle;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * Lays out lower major connectors.
 *
 * <p>A bar in the lingual sulcus stands nearly upright, so that little of it could be seen from
 * above. As is the custom of design sheets its height is laid out flat: the width in plan is the
 * height of the bar, and distances from the margins are true along the mucosa. A dental bar stands
 * on the teeth; its width in plan is its thickness.
 */
final class LowerConnector {
  /** Distance from gingival margins: 3 mm (UK and US teaching), 3–4 in others. */
  static final double CLEARANCE = 3;

  /** Height of a lingual bar: 4 mm; 4–5 in others. */
  static final double BAR_HEIGHT = 4;

  /** A sublingual bar lies on the floor of the mouth, so farther from the margins (from memory). */
  static final double SUBLINGUAL_CLEARANCE = 5;

  /** Width of a sublingual bar lying flat: 3–4 mm by 2 high. */
  static final double SUBLINGUAL_WIDTH = 3;

  /** Height of a dental bar: 4 mm. */
  static final double DENTAL_HEIGHT = 4;

  /** Thickness of a dental bar: 1.5–2.5 mm. */
  static final double DENTAL_THICKNESS = 2.2;

  /** Height of the upper limb of a continuous bar: 2–3 mm. */
  static final double CONTINUOUS_HEIGHT = 2.4;

  /** Height of a labial bar: 5 mm. */
  static final double LABIAL_HEIGHT = 5;

  /** Width of a tongue to a saddle that the bar passes, mm (from memory). */
  private static final double TONGUE_WIDTH = 3.5;

  private final Ground ground;
  private final MajorConnector connector;

  LowerConnector(Ground ground, MajorConnector connector) {
    this.ground = ground;
    this.connector = connector;
  }

  Laid lay() {
    return switch (connector.form()) {
      case SUBLINGUAL_BAR -> bar(SUBLINGUAL_CLEARANCE, SUBLINGUAL_WIDTH, Face.LINGUAL);
      case LABIAL_BAR -> bar(CLEARANCE, LABIAL_HEIGHT, Face.BUCCAL);
      case LINGUAL_PLATE -> plate();
      case DENTAL_BAR -> dentalBar();
      case CONTINUOUS_BAR -> continuousBar();
      default -> bar(CLEARANCE, BAR_HEIGHT, Face.LINGUAL);
    };
  }

  private Laid bar(double usualClearance, double usualHeight, Face face) {
    double height = connector.shape().height().orElse(usualHeight);
    double clear = connector.shape().clearance().orElse(usualClearance) + height / 2;
    BarCourse course = BarCourse.of(ground, connector.span(), clear, face);
    Region body = body(course.path(), height);
    Region joined = Tongue.with(ground, connector.span(), body, TONGUE_WIDTH, face);
    return measured(joined, course, height, face);
  }

  private Laid measured(Region body, BarCourse course, double height, Face face) {
    Laid laid =
        Laid.of(connector, Substance.CAST_METAL, body)
            .withCentreline(course.path())
            .with(Measure.HEIGHT, height)
            .with(Measure.PLAN_LENGTH, course.path().length());
    Optional<Double> clear = clearance(course, height, face);
    return clear.isPresent() ? laid.with(Measure.MARGIN_CLEARANCE, clear.get()) : laid;
  }

  /**
   * The smallest distance from the margins of standing teeth to the bar where it passes teeth.
   * Where it runs into a saddle it must come near the abutment, as all frameworks do; that part
   * counts for nothing here.
   */
  private Optional<Double> clearance(BarCourse course, double height, Face face) {
    List<Point> necks = Necks.points(ground, face);
    List<SaddleReach> saddles =
        ground.design().stream(Saddle.class).map(s -> SaddleReach.of(ground, s.span())).toList();
    RidgeFrame ridge = ground.ridge();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ridge.size(); i++) {
      double arc = ridge.arc(i);
      if (arc < course.from()
          || arc > course.to()
          || saddles.stream().anyMatch(r -> r.holds(arc))) {
        continue;
      }
      Point p = ridge.station(i, course.across()[i]);
      for (Point q : necks) {
        least = Math.min(least, p.distanceTo(q));
      }
    }
    return Double.isInfinite(least) ? Optional.empty() : Optional.of(least - height / 2);
  }

  private Laid plate() {
    double height = connector.shape().height().orElse(BAR_HEIGHT);
    double clear = connector.shape().clearance().orElse(CLEARANCE) + height / 2;
    BarCourse course = BarCourse.of(ground, connector.span(), clear, Face.LINGUAL);
    Region bar = body(course.path(), height);
    return standing(connector.span())
        .map(s -> sheet(s, course))
        .map(r -> bar.plus(r).filleted(1.5).simplified(0.02))
        .map(r -> Laid.of(connector, Substance.CAST_METAL, r))
        .orElseGet(() -> Laid.of(connector, Substance.CAST_METAL, bar))
        .withCentreline(course.path())
        .with(Measure.HEIGHT, height)
        .with(Measure.PLAN_LENGTH, course.path().length());
  }

  /** The sheet from the scalloped edge down to the middle of the bar. */
  private Region sheet(Span teeth, BarCourse course) {
    Path edge = ScallopedEdge.over(ground, teeth);
    RidgeFrame ridge = ground.ridge();
    double from = Math.max(course.from(), ridge.arcOf(edge.start()));
    double to = Math.min(course.to(), ridge.arcOf(edge.end()));
    if (to - from < 1) {
      return Region.EMPTY;
    }
    List<Point> ring = new ArrayList<>(edge.points());
    List<Point> lower = new ArrayList<>(ridge.curve(course.across(), from, to).points());
    Collections.reverse(lower);
    ring.addAll(lower);
    return Outline.of(ring).toRegion();
  }

  private Laid dentalBar() {
    double height = connector.shape().height().orElse(DENTAL_HEIGHT);
    BarCourse course = BarCourse.onTeeth(ground, connector.span(), -0.3);
    return Laid.of(connector, Substance.CAST_METAL, body(course.path(), DENTAL_THICKNESS))
        .withCentreline(course.path())
        .with(Measure.HEIGHT, height)
        .with(Measure.PLAN_LENGTH, course.path().length());
  }

  private Laid continuousBar() {
    Laid lower = bar(CLEARANCE, BAR_HEIGHT, Face.LINGUAL);
    List<Tooth> held =
        connector.span().teeth().stream()
            .filter(t -> t.position() <= 4 && ground.chart().stands(t))
            .toList();
    if (held.size() < 2) {
      return lower;
    }
    Tooth first = held.get(0);
    Tooth last = held.get(held.size() - 1);
    List<Point> knots = new ArrayList<>();
    Span.of(first, last).teeth().stream()
        .map(ground::tooth)
        .filter(t -> !t.isClosed())
        .forEach(t -> knots.add(t.at(0, t.tooth().isAnterior() ? -0.66 : -0.9)));
    Path slim = Path.smooth(knots);
    List<Region> parts = new ArrayList<>();
    parts.add(lower.body());
    parts.add(Region.band(slim, CONTINUOUS_HEIGHT));
    for (Tooth t : List.of(first, last)) {
      Strut strut = Strut.to(ground, lower.body(), t, MinorConnector.Place.DISTAL_EMBRASURE);
      parts.add(strut.body());
      Point foot = t == first ? slim.start() : slim.end();
      parts.add(Region.band(Path.of(foot, strut.path().start()), 1.8));
    }
    return new Laid(
        connector,
        Substance.CAST_METAL,
        Region.union(parts),
        lower.centreline(),
        Optional.empty(),
        List.of(slim),
        lower.measures());
  }

  /** The run of the span from its first standing tooth to its last. */
  private Optional<Span> standing(Span span) {
    List<Tooth> up = span.teeth().stream().filter(ground.chart()::stands).toList();
    return up.isEmpty() ? Optional.empty() : Optional.of(Span.of(up.get(0), up.get(up.size() - 1)));
  }

  private static Region body(Path path, double width) {
    return Region.band(path, width).simplified(0.02);
  }
}
