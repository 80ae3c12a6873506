package saddlewright.desktop.sheet.handles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.desktop.Words;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** The handles of a major connector: its borders, opening, height, breadth and clearance. */
final class MajorConnectorHandles {
  private static final Vector BACK = new Vector(0, 1);
  private static final Vector FORWARD = new Vector(0, -1);

  /** Borders are taken no closer together than this, mm: metal is to be left between them. */
  private static final double LEAST_APART = 1;

  /** A border farther than this from a tooth keeps clear of it without being asked to, mm. */
  private static final double BESIDE = 14;

  private static final double DEEPEST = 80;

  private final Situation situation;
  private final MajorConnector connector;
  private final ConnectorShape shape;
  private final Laid laid;
  private final List<Handle> out = new ArrayList<>();

  private MajorConnectorHandles(Situation situation, MajorConnector connector, Laid laid) {
    this.situation = situation;
    this.connector = connector;
    this.shape = connector.shape();
    this.laid = laid;
  }

  static List<Handle> of(Situation s, MajorConnector c) {
    Optional<Laid> laid = s.layout().find(c.id()).filter(l -> !l.body().isEmpty());
    return laid.map(l -> new MajorConnectorHandles(s, c, l).all()).orElse(List.of());
  }

  private List<Handle> all() {
    List<Double> ys = onMidline();
    if (!ys.isEmpty()) {
      if (situation.arch() == Arch.LOWER) {
        lower(ys.get(0), ys.get(ys.size() - 1));
      } else {
        upper(ys);
      }
    }
    return out;
  }

  /** The depths at which its borders cross the midline, in rising order. */
  private List<Double> onMidline() {
    List<Double> ys = new ArrayList<>();
    for (Path p : laid.body().inside(Path.of(new Point(0, -40), new Point(0, 110)))) {
      ys.add(Math.min(p.start().y(), p.end().y()));
      ys.add(Math.max(p.start().y(), p.end().y()));
    }
    ys.sort(null);
    return ys;
  }

  private void lower(double first, double last) {
    boolean labial = connector.form() == ConnectorForm.LABIAL_BAR;
    Vector down = labial ? FORWARD : BACK;
    double height = laid.measure(Measure.HEIGHT).orElse(last - first);
    double foot = labial ? first : last;
    if (connector.form() != ConnectorForm.LINGUAL_PLATE
        && connector.form() != ConnectorForm.DENTAL_BAR) {
      double clear =
          shape
              .clearance()
              .orElse(
                  Slide.onGrid(laid.measure(Measure.MARGIN_CLEARANCE).orElse(0), Slide.FINE_GRID));
      slide(
          "clearance",
          new Point(0, foot - down.y() * height),
          down,
          clear,
          0,
          15,
          v -> shape.withClearance(Optional.of(v)),
          margins(),
          floor());
    }
    slide(
        "height",
        new Point(0, foot),
        down,
        height,
        1,
        25,
        v -> shape.withHeight(Optional.of(v)),
        Gauge.of("bars-are-high-enough", Quantity.BAR_HEIGHT, Measure.HEIGHT),
        floor());
  }

  private void upper(List<Double> ys) {
    double first = ys.get(0);
    double last = ys.get(ys.size() - 1);
    boolean horseshoe = connector.form() == ConnectorForm.HORSESHOE;
    boolean open = ys.size() >= 4;
    double opens = open || horseshoe ? ys.get(1) : last;
    double closes = open ? ys.get(2) : last;
    // What is not dragged stays where it is, also when it has only its usual place so far.
    ConnectorShape held =
        horseshoe
            ? shape.withOpening(keep(shape.openingFront(), opens), shape.openingBack())
            : open
                ? shape.withOpening(
                    keep(shape.openingFront(), opens), keep(shape.openingBack(), closes))
                : shape;
    slide(
        "anterior",
        new Point(0, first),
        BACK,
        first,
        0,
        opens - LEAST_APART,
        v ->
            held.withBorders(
                Optional.of(v),
                horseshoe ? shape.posteriorBorder() : keep(shape.posteriorBorder(), last)),
        limbs(),
        margins());
    if (!horseshoe) {
      slide(
          "posterior",
          new Point(0, last),
          BACK,
          last,
          (open ? closes : first) + LEAST_APART,
          DEEPEST,
          v -> held.withBorders(keep(shape.anteriorBorder(), first), Optional.of(v)),
          limbs(),
          Gauge.of("upper-connectors-end-on-the-hard-palate"),
          margins());
    }
    if (open) {
      slide(
          "opening-front",
          new Point(0, opens),
          BACK,
          opens,
          first + LEAST_APART,
          closes - LEAST_APART,
          v -> shape.withOpening(Optional.of(v), keep(shape.openingBack(), closes)),
          limbs(),
          opening());
      slide(
          "opening-back",
          new Point(0, closes),
          BACK,
          closes,
          opens + LEAST_APART,
          last - LEAST_APART,
          v -> shape.withOpening(keep(shape.openingFront(), opens), Optional.of(v)),
          limbs(),
          opening());
    } else if (horseshoe) {
      slide(
          "opening-front",
          new Point(0, opens),
          BACK,
          opens,
          first + LEAST_APART,
          DEEPEST,
          v -> shape.withOpening(Optional.of(v), shape.openingBack()),
          limbs());
    }
    laid.measure(Measure.WIDTH)
        .ifPresent(w -> sideLimb(w, open ? (opens + closes) / 2 : opens + 12));
    clearance();
  }

  /** The inner border of the limb on the viewer's right, beside the opening. */
  private void sideLimb(double width, double y) {
    List<Path> metal = laid.body().inside(Path.of(new Point(0, y), new Point(60, y)));
    if (metal.isEmpty()) {
      return;
    }
    double inner =
        metal.stream().mapToDouble(p -> Math.min(p.start().x(), p.end().x())).min().orElseThrow();
    if (inner > 0.5) {
      slide(
          "side-limbs",
          new Point(inner, y),
          new Vector(-1, 0),
          width,
          2,
          20,
          v -> shape.withHeight(Optional.of(v)),
          Gauge.of("side-limbs-are-broad-enough", sideQuantity(), Measure.WIDTH));
    }
  }

  private Quantity sideQuantity() {
    return connector.form() == ConnectorForm.HORSESHOE
        ? Quantity.HORSESHOE_LIMB
        : Quantity.RING_SIDE_LIMB;
  }

  /** The border beside the standing tooth that it comes nearest to. */
  private void clearance() {
    Optional<PlacedTooth> nearest =
        connector.span().teeth().stream()
            .filter(situation.chart()::stands)
            .map(situation.form()::tooth)
            .min(Comparator.comparingDouble(t -> laid.body().distanceTo(t.rim(270))));
    if (nearest.isEmpty() || laid.measure(Measure.MARGIN_CLEARANCE).isEmpty()) {
      return;
    }
    Point neck = nearest.get().rim(270);
    Point border = null;
    for (Outline o : laid.body().boundaries()) {
      Point p = o.toPath().nearest(neck);
      border = border == null || p.distanceTo(neck) < border.distanceTo(neck) ? p : border;
    }
    double way = neck.distanceTo(border);
    if (way > 0.2 && way < BESIDE) {
      double clear =
          shape
              .clearance()
              .orElse(
                  Slide.onGrid(
                      laid.measure(Measure.MARGIN_CLEARANCE).getAsDouble(), Slide.FINE_GRID));
      slide(
          "clearance",
          border,
          neck.to(border).unit(),
          clear,
          0,
          15,
          v -> shape.withClearance(Optional.of(v)),
          margins());
    }
  }

  private Gauge margins() {
    boolean upper = situation.arch() == Arch.UPPER;
    return Gauge.of(
        "connectors-clear-the-gingival-margins",
        upper ? Quantity.UPPER_BORDER : Quantity.LOWER_BORDER,
        Measure.MARGIN_CLEARANCE);
  }

  private static Gauge floor() {
    return Gauge.of("lower-bars-clear-the-floor-of-the-mouth", Quantity.FLOOR_CLEARANCE);
  }

  private static Gauge opening() {
    return Gauge.of("rings-are-open-enough", Quantity.RING_OPENING, Measure.OPENING);
  }

  private Gauge limbs() {
    return switch (connector.form()) {
      case PALATAL_RING -> Gauge.of("ring-limbs-are-broad-enough");
      case HORSESHOE ->
          Gauge.of("horseshoe-limbs-are-broad-enough", Quantity.HORSESHOE_LIMB, Measure.HEIGHT);
      default -> Gauge.of("straps-are-broad-enough", Quantity.STRAP_WIDTH, Measure.HEIGHT);
    };
  }

  /** A border that has been set stays where it is; one that has not is set where it is. */
  private static Optional<Double> keep(Optional<Double> set, double now) {
    return set.isPresent() ? set : Optional.of(Slide.onGrid(now, Slide.FINE_GRID));
  }

  private void slide(
      String id,
      Point at,
      Vector along,
      double now,
      double least,
      double most,
      DoubleFunction<ConnectorShape> shaping,
      Gauge... gauges) {
    out.add(
        new Handle(
            id,
            Words.of("handle." + id),
            situation.arch(),
            connector.id(),
            new Slide(
                at,
                along,
                now,
                least,
                Math.max(least, most),
                v -> new DesignEdit.Change(connector.withShape(shaping.apply(v)))),
            List.of(gauges)));
  }
}
