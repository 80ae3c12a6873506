package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/**
 * Lays out upper major connectors as areas of the palate between a front and a rear border, both of
 * which cross the midline at a right angle.
 *
 * <p>The details of the result are the front border and the rear border.
 */
final class UpperConnector {
  /** Distance of borders from palatal gingival margins: 6 mm (US teaching; 3–7 in others). */
  static final double CLEARANCE = 6;

  /** Least width of a strap: 8 mm; one UK school asks for 15. */
  static final double STRAP_LEAST = 8;

  static final double STRAP_MOST = 15;

  /** A strap may be wider at the saddles than in the middle by this much, mm (from memory). */
  private static final double STRAP_FLARE = 4;

  /** Width of a palatal bar, which is narrower than a strap. */
  static final double BAR_WIDTH = 6;

  /** Limbs of a ring: front 6–8, rear 8–10, sides 7–9 mm. */
  static final double RING_FRONT = 7;

  static final double RING_REAR = 9;
  static final double RING_SIDE = 8;

  /** Least front-to-back opening of a ring: 15 mm. */
  static final double RING_OPENING = 15;

  /** Limbs of a horseshoe: 6–8 mm. */
  static final double HORSESHOE_LIMB = 8;

  /** The rear border stays on the hard palate by this much, mm (common practice). */
  static final double BEFORE_SOFT_PALATE = 2;

  /** Added so that the rounding of corners does not eat into an opening, mm. */
  private static final double SPARE = 1;

  /** Limbs beside the nose of an opening may be as narrow as this, mm. */
  private static final double LEAST_LIMB = 5;

  /** Half length of the oval at the front of a horseshoe's opening, mm. */
  private static final double NOSE = 9;

  /** Width of a tongue to a saddle beside the connector, mm (from memory). */
  private static final double TONGUE_WIDTH = 5;

  /** How far behind the middle of the span's last tooth the connector goes, mm. */
  private static final double BESIDE_END = 4;

  /** How far a plate or ring goes forward beside the abutment in front of a saddle, mm. */
  private static final double BESIDE_ABUTMENT = 8;

  private static final double WIDE = 40;

  private final Ground ground;
  private final MajorConnector connector;
  private final ConnectorShape shape;
  private final PalateField field;

  /** How far forward and back the connector reaches at one side, as depths y in mm. */
  private record Flank(double front, double rear) {
    double middle() {
      return (front + rear) / 2;
    }

    double width() {
      return rear - front;
    }
  }

  UpperConnector(Ground ground, MajorConnector connector) {
    this.ground = ground;
    this.connector = connector;
    this.shape = connector.shape();
    this.field = new PalateField(ground, connector.span(), shape.clearance().orElse(CLEARANCE));
  }

  Laid lay() {
    Flank right = flank(Side.RIGHT);
    Flank left = flank(Side.LEFT);
    return switch (connector.form()) {
      case PALATAL_STRAP, PALATAL_BAR -> strap(right, left);
      case PALATAL_RING -> ring(right, left);
      case HORSESHOE -> horseshoe(right, left);
      default -> plate(right, left);
    };
  }

  private Laid strap(Flank right, Flank left) {
    boolean bar = connector.form() == ConnectorForm.PALATAL_BAR;
    double room = Math.min(right.width(), left.width());
    double usual = bar ? BAR_WIDTH : Math.max(STRAP_LEAST, Math.min(STRAP_MOST, 0.7 * room));
    double width = shape.height().orElse(usual);
    double middle = (right.middle() + left.middle()) / 2;
    middle = Math.min(middle, limit(0) - BEFORE_SOFT_PALATE - width / 2);
    double front = shape.anteriorBorder().orElse(middle - width / 2);
    double rear = shape.posteriorBorder().orElse(front + width);
    Flank r = narrowed(right, bar ? width : width + STRAP_FLARE);
    Flank l = narrowed(left, bar ? width : width + STRAP_FLARE);
    Path ahead = border(r.front, front, l.front);
    Path behind = border(r.rear, Math.max(front + 1, rear), l.rear);
    return measured(between(field.inside(0), ahead, behind), ahead, behind);
  }

  private Laid plate(Flank right, Flank left) {
    double front = shape.anteriorBorder().orElse(plateFront(right, left));
    double rear = shape.posteriorBorder().orElse(plateRear(right, left));
    Path ahead = border(right.front, front, left.front);
    Path behind = border(right.rear, Math.max(front + 1, rear), left.rear);
    return measured(between(field.inside(0), ahead, behind), ahead, behind);
  }

  private Laid ring(Flank right, Flank left) {
    double front = plateFront(right, left);
    double rear = plateRear(right, left);
    double least = RING_FRONT + RING_OPENING + RING_REAR + SPARE;
    if (rear - front < least) {
      double foremost = foremost();
      front = Math.max(foremost, rear - least);
      rear = Math.max(rear, Math.min(front + least, limit(0) - BEFORE_SOFT_PALATE));
    }
    double limb = shape.height().orElse(RING_SIDE);
    front = shape.anteriorBorder().orElse(front);
    rear = Math.max(front + 4, shape.posteriorBorder().orElse(rear));
    double open = shape.openingFront().orElse(front + RING_FRONT);
    double close = shape.openingBack().orElse(rear - RING_REAR);
    Path ahead = border(Math.min(right.front, front + 4), front, Math.min(left.front, front + 4));
    Path behind = border(Math.max(right.rear, rear - 6), rear, Math.max(left.rear, rear - 6));
    Region outer = between(field.inside(0), ahead, behind);
    if (close - open > 1) {
      Path openFront = border(open + 2, open, open + 2);
      Path openBack = border(close - 2, close, close - 2);
      Region wide = between(field.inside(limb), openFront, openBack);
      outer = outer.minus(opening(wide, (open + close) / 2, (close - open) / 2));
    }
    return measured(outer, ahead, behind);
  }

  private Laid horseshoe(Flank right, Flank left) {
    double limb = shape.height().orElse(HORSESHOE_LIMB);
    double foremost = foremost();
    double front = shape.anteriorBorder().orElse(foremost);
    double sides = front <= foremost ? front - 8 : front;
    Path ahead = border(sides, front <= foremost ? front - 8 : front, sides);
    double rear = Math.max(right.rear, left.rear);
    Path behind = border(right.rear, rear, left.rear);
    Region outer = between(field.inside(0), ahead, behind);
    double open = Math.max(front, foremost) + limb;
    double opening = shape.openingFront().orElse(open);
    Path openFront = border(opening + 1, opening, opening + 1);
    Path openBack = border(WIDE * 3, WIDE * 3, WIDE * 3);
    Region wide = between(field.inside(limb), openFront, openBack);
    Region inner = opening(wide, opening + NOSE, NOSE);
    return measured(outer.minus(inner), ahead, behind);
  }

  /** An opening with an oval nose where the palate is too narrow for limbs of the full width. */
  private Region opening(Region wide, double middle, double half) {
    Region oval =
        Outline.ellipse(new Point(0, middle), Math.min(7, half), half, 0)
            .toRegion()
            .intersection(field.inside(LEAST_LIMB));
    // Corners rounder than the opening is long would round it away.
    return wide.plus(oval).filleted(9).rounded(Math.min(4, 0.7 * half));
  }

  private Laid measured(Region raw, Path ahead, Path behind) {
    Region body =
        Tongue.with(ground, connector.span(), raw.rounded(2), TONGUE_WIDTH, Face.LINGUAL)
            .filleted(3)
            .simplified(0.02);
    if (body.isEmpty()) {
      body = raw;
    }
    Laid laid =
        Laid.of(connector, Substance.CAST_METAL, body)
            .withDetails(List.of(ahead, behind))
            .with(Measure.AREA_MM2, body.area());
    double clear = body.isEmpty() ? Double.POSITIVE_INFINITY : field.clearance(body);
    if (!Double.isInfinite(clear)) {
      laid = laid.with(Measure.MARGIN_CLEARANCE, clear);
    }
    List<Path> metal = body.inside(Path.of(new Point(0, -5), new Point(0, 110)));
    if (!metal.isEmpty()) {
      laid = laid.with(Measure.HEIGHT, metal.get(0).length());
    }
    if (metal.size() > 1) {
      laid =
          laid.with(Measure.OPENING, metal.get(1).start().y() - metal.get(0).end().y())
              .with(Measure.WIDTH, shape.height().orElse(RING_SIDE));
    } else if (connector.form() == ConnectorForm.HORSESHOE) {
      laid = laid.with(Measure.WIDTH, shape.height().orElse(HORSESHOE_LIMB));
    }
    return laid;
  }

  /** Depth on the midline of the field's front. */
  private double foremost() {
    return field.at(ground.ridge().arcOf(middleOfArch())).y();
  }

  private Point middleOfArch() {
    PlacedTooth r = ground.tooth(Tooth.T11);
    PlacedTooth l = ground.tooth(Tooth.T21);
    return r.centre().midpoint(l.centre());
  }

  private double plateFront(Flank right, Flank left) {
    double foremost = foremost();
    boolean anterior =
        field.reaches().stream().anyMatch(s -> s.holds(ground.ridge().arcOf(middleOfArch())));
    return anterior ? foremost : Math.max(foremost, (right.front + left.front) / 2 + 0.5);
  }

  private double plateRear(Flank right, Flank left) {
    double hardPalate = limit(0) - BEFORE_SOFT_PALATE;
    return connector.form() == ConnectorForm.PALATAL_PLATE
        ? Math.min(hardPalate, Math.max(right.rear, left.rear))
        : Math.min(hardPalate, (right.rear + left.rear) / 2);
  }

  private static Flank narrowed(Flank f, double width) {
    double half = Math.min(f.width(), width + 3) / 2;
    return new Flank(f.middle() - half, f.middle() + half);
  }

  private double limit(double x) {
    Path line = ground.form().palateLimit();
    return line.nearest(new Point(x, line.at(line.length() / 2).y())).y();
  }

  /** The saddles' extent at a side; where there is none, the neighbourhood of the span's end. */
  private Flank flank(Side side) {
    RidgeFrame ridge = ground.ridge();
    double middle = ridge.arcOf(middleOfArch());
    double front = Double.POSITIVE_INFINITY;
    double rear = Double.NEGATIVE_INFINITY;
    double hard = limit(0) - BEFORE_SOFT_PALATE;
    boolean others =
        field.reaches().stream()
            .anyMatch(r -> !r.holds(middle) && (r.from() > middle) == (side == Side.LEFT));
    for (SaddleReach r : field.reaches()) {
      if (isStrap() && others && r.holds(middle)) {
        continue;
      }
      double a = side == Side.RIGHT ? r.from() : Math.max(middle, r.from());
      double b = side == Side.RIGHT ? Math.min(middle, r.to()) : r.to();
      if (b - a < 1) {
        continue;
      }
      double lead = isStrap() ? 0 : BESIDE_ABUTMENT;
      double ahead = side == Side.RIGHT ? Math.min(middle, b + lead) : Math.max(middle, a - lead);
      front = Math.min(front, field.at(ahead).y());
      rear = Math.max(rear, Math.max(field.at(a).y(), field.at(b).y()));
    }
    Tooth end = side == Side.RIGHT ? connector.span().first() : connector.span().last();
    double y = field.at(ridge.arcOf(ground.tooth(end).centre())).y();
    if (!isStrap() && end.side() == side && rear > front) {
      rear = Math.max(rear, y + BESIDE_END);
    }
    if (rear - front < 1) {
      front = y - 5;
      rear = y + 5;
    }
    rear = Math.min(rear, hard);
    return new Flank(Math.min(front, rear - 4), rear);
  }

  private boolean isStrap() {
    return connector.form() == ConnectorForm.PALATAL_STRAP
        || connector.form() == ConnectorForm.PALATAL_BAR;
  }

  /** A border from the right side to the left, level on the midline and at the sides. */
  private Path border(double right, double middle, double left) {
    double reach = 17;
    List<Point> out = new ArrayList<>();
    for (double x = -WIDE; x <= WIDE + 1e-9; x += 0.5) {
      double side = x < 0 ? right : left;
      double share = Fairing.step(Math.abs(x) / reach);
      out.add(new Point(x, middle + (side - middle) * share));
    }
    return Path.through(out);
  }

  private static Region between(Region field, Path ahead, Path behind) {
    List<Point> ring = new ArrayList<>(ahead.points());
    List<Point> back = new ArrayList<>(behind.points());
    Collections.reverse(back);
    ring.addAll(back);
    return field.intersection(Outline.of(ring).toRegion());
  }
}
