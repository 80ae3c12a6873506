package saddlewright.desktop.survey.card;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Path;
import saddlewright.archform.CrownDetail;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The tooth from above, enlarged: round it the six zones with their undercuts, on it the sites of
 * rests with the room that they have, and a knob to turn it by. It lies as on the sheet: cheek and
 * lip are at the top for an upper tooth and at the foot for a lower one.
 */
final class PlanPicture extends Picture {
  /**
   * Half breadth of the middle zones, degrees, and where the end zones stop short of the contact.
   */
  private static final double MIDDLE = 24;

  private static final double CONTACT = 13;
  private static final double NEAR = 0.35;
  private static final double FAR = 3.1;

  /** How far a drag outwards makes an undercut deeper, mm for each mm. */
  private static final double DRAG = 0.15;

  private final Map<Zone, Knob> zones = new EnumMap<>(Zone.class);
  private final Map<RestSite, Knob> sites = new EnumMap<>(RestSite.class);
  private final Knob turn;
  private Vector along = new Vector(1, 0);
  private Vector out = new Vector(0, 1);
  private Point centre = Point.ORIGIN;

  PlanPicture(
      Surveyed card, Tooth tooth, Knob.Writing writing, java.util.function.Consumer<Knob> look) {
    super(card, "picture-plan", Words.of("card.plan", ToothNames.full(tooth)));
    ask(403, 325);
    boolean upper = tooth.arch() == Arch.UPPER;
    boolean right = tooth.side() == Side.RIGHT;
    for (Zone z : Zone.values()) {
      boolean up = (z.face() == Face.BUCCAL) == upper;
      NumberTouch touch =
          new NumberTouch(
              "undercut-" + z.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
              Items.undercut(z),
              NumberTouch.GAUGES,
              0.05,
              0.01,
              t -> 0.25,
              new Vector(0, up ? DRAG : -DRAG));
      Knob k = new Knob(card, touch, this::toPicture, writing).onLook(look);
      zones.put(z, k);
      addKnob(k);
    }
    for (RestSite s : RestSite.values()) {
      if (s.existsOn(tooth)) {
        NumberTouch touch =
            new NumberTouch(
                "room-" + s.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                Items.room(s),
                List.of(1.0, 1.5, 2.0, 0.0, 0.5),
                0.5,
                0.1,
                t -> 1.0,
                new Vector(0, 0.5));
        Knob k = new Knob(card, touch, this::toPicture, writing).onLook(look);
        sites.put(s, k);
        addKnob(k);
      }
    }
    turn = new Knob(card, new RotationTouch(right == upper), this::toPicture, writing).onLook(look);
    addKnob(turn);
  }

  private boolean isUpper() {
    return card().tooth().arch() == Arch.UPPER;
  }

  /** Millimetres of the picture, y up, of a place of the arch. */
  private Point local(Point p) {
    Vector v = centre.to(p);
    boolean right = card().tooth().side() == Side.RIGHT;
    return new Point((right ? 1 : -1) * v.dot(along), isUpper() ? v.dot(out) : -v.dot(out));
  }

  private Point2D pixel(Point p) {
    Point l = local(p);
    return at(l.x(), l.y());
  }

  private List<Point2D> pixels(List<Point> points) {
    return points.stream().map(this::pixel).toList();
  }

  @Override
  protected void draw() {
    Tooth tooth = card().tooth();
    PlacedTooth t = card().form().tooth(tooth);
    centre = t.centre();
    out = t.outward();
    boolean right = tooth.side() == Side.RIGHT;
    along = right ? out.quarterTurn() : out.quarterTurn().negated();
    double reach = Math.max(t.halfWidth(), t.halfDepth());
    double tall = getHeight() / (2 * (reach + 5.2));
    double wide = getWidth() / (2 * (reach + 7.4));
    frame(Math.min(tall, wide), getWidth() / 2, getHeight() / 2);
    neighbours(tooth);
    names(t);
    boolean stands = card().chart().stands(tooth);
    add(line(pixels(t.outline().points()), true), stands ? "tooth-body" : "tooth-lost");
    if (stands) {
      for (CrownDetail d : t.details()) {
        add(line(pixels(d.path().points()), d.kind() == CrownDetail.Kind.TABLE), "tooth-detail");
      }
    } else {
      word(
          Words.of(card().chart().tooth(tooth).status()),
          at(0, 0),
          HPos.CENTER,
          VPos.CENTER,
          "picture-word");
    }
    zones.forEach((z, k) -> zone(t, z, k, stands));
    sites.forEach((s, k) -> site(t, s, k, stands));
    turning(t, stands);
  }

  private void neighbours(Tooth tooth) {
    for (End end : End.values()) {
      tooth
          .neighbour(end)
          .filter(n -> card().chart().stands(n))
          .map(n -> card().form().tooth(n))
          .filter(n -> !n.isClosed())
          .ifPresent(n -> add(line(pixels(n.outline().points()), true), "tooth-neighbour"));
    }
  }

  private void names(PlacedTooth t) {
    Tooth tooth = t.tooth();
    boolean right = tooth.side() == Side.RIGHT;
    double w = getWidth();
    double h = getHeight();
    HPos mesial = right ? HPos.RIGHT : HPos.LEFT;
    HPos distal = right ? HPos.LEFT : HPos.RIGHT;
    word(
        Words.of("card.mesial"),
        new Point2D(right ? w - 8 : 8, h / 2 - 3.4 * scale()),
        mesial,
        VPos.CENTER,
        "picture-side");
    word(
        Words.of("card.distal"),
        new Point2D(right ? 8 : w - 8, h / 2 - 3.4 * scale()),
        distal,
        VPos.CENTER,
        "picture-side");
    String top = ToothNames.face(tooth, isUpper() ? Face.BUCCAL : Face.LINGUAL);
    String foot = ToothNames.face(tooth, isUpper() ? Face.LINGUAL : Face.BUCCAL);
    word(Words.capital(top), new Point2D(8, 6), HPos.LEFT, VPos.TOP, "picture-side");
    word(Words.capital(foot), new Point2D(8, h - 6), HPos.LEFT, VPos.BOTTOM, "picture-side");
  }

  private static double[] span(Zone z) {
    double face = z.face() == Face.BUCCAL ? 90 : 270;
    if (z.end().isEmpty()) {
      return new double[] {face - MIDDLE, face + MIDDLE};
    }
    // Angles rise from mesial over buccal to distal, and back over lingual.
    boolean before = (z.end().get() == End.MESIAL) == (z.face() == Face.BUCCAL);
    return before
        ? new double[] {face - 90 + CONTACT, face - MIDDLE}
        : new double[] {face + MIDDLE, face + 90 - CONTACT};
  }

  private List<Point> band(PlacedTooth t, double[] span, double from, double to) {
    List<Point> points = new ArrayList<>();
    int n = 14;
    double gap = 1.2;
    for (int i = 0; i <= n; i++) {
      points.add(round(t, span[0] + gap + (span[1] - span[0] - 2 * gap) * i / n, from));
    }
    for (int i = n; i >= 0; i--) {
      points.add(round(t, span[0] + gap + (span[1] - span[0] - 2 * gap) * i / n, to));
    }
    return points;
  }

  /** A place outside the crown, which runs round it smoothly whatever its grooves. */
  private static Point round(PlacedTooth t, double degrees, double off) {
    double sum = 0;
    int n = 6;
    for (int i = -n; i <= n; i++) {
      double most = 0;
      for (int k = -2; k <= 2; k++) {
        most = Math.max(most, t.centre().distanceTo(t.rim(degrees + i * 4 + k * 5)));
      }
      sum += most;
    }
    return t.centre().plus(t.direction(degrees).times(sum / (2 * n + 1) + off));
  }

  private void zone(PlacedTooth t, Zone z, Knob knob, boolean stands) {
    knob.setVisible(stands);
    knob.setFocusTraversable(stands);
    if (!stands) {
      return;
    }
    ArchChart chart = card().chart();
    Optional<Double> depth = Items.undercut(z).value(chart, t.tooth());
    double[] span = span(z);
    List<Node> nodes = new ArrayList<>();
    Path whole = line(pixels(band(t, span, NEAR, FAR)), true);
    whole.getStyleClass().addAll("zone", depth.isEmpty() ? "zone-open" : "zone-charted");
    nodes.add(whole);
    depth
        .filter(d -> d > 0)
        .ifPresent(
            d -> {
              // The deeper, the broader the band that is filled.
              double to = NEAR + (FAR - NEAR) * Math.min(1, 0.15 + d / 1.0 * 0.85);
              Path filled = line(pixels(band(t, span, NEAR, to)), true);
              filled.getStyleClass().add("zone-filled");
              nodes.add(filled);
            });
    knob.show(nodes.toArray(Node[]::new));
    double at = PlacedTooth.degrees(z);
    Point2D middle = pixel(round(t, at, (NEAR + FAR) / 2));
    String text =
        depth
            .map(d -> d == 0 ? Words.of("card.none") : Words.number(d))
            .orElseGet(() -> Words.of("card.open"));
    word(text, middle, HPos.CENTER, VPos.CENTER, depth.isEmpty() ? "picture-open" : "zone-number");
    Point2D beyond = pixel(round(t, at, FAR + 0.5));
    double lean = local(round(t, at, FAR)).x();
    HPos across = Math.abs(lean) < 1.6 ? HPos.CENTER : lean > 0 ? HPos.LEFT : HPos.RIGHT;
    VPos down =
        Math.abs(lean) >= 1.6
            ? VPos.CENTER
            : local(round(t, at, FAR)).y() > 0 ? VPos.BOTTOM : VPos.TOP;
    word(ToothNames.zone(t.tooth(), z), beyond, across, down, "picture-word");
  }

  private void site(PlacedTooth t, RestSite s, Knob knob, boolean stands) {
    knob.setVisible(stands);
    knob.setFocusTraversable(stands);
    if (!stands) {
      return;
    }
    Point2D at = pixel(t.seat(s));
    double r = Math.max(Knob.TARGET / 2, 1.05 * scale());
    Circle mark = new Circle(at.getX(), at.getY(), r);
    Optional<Double> room = Items.room(s).value(card().chart(), t.tooth());
    mark.getStyleClass().addAll("site", room.isEmpty() ? "site-open" : "site-charted");
    knob.show(mark);
    word(
        room.map(Words::number).orElseGet(() -> Words.of("card.open")),
        at,
        HPos.CENTER,
        VPos.CENTER,
        room.isEmpty() ? "picture-open" : "site-number");
  }

  private void turning(PlacedTooth t, boolean stands) {
    turn.setVisible(stands);
    turn.setFocusTraversable(stands);
    if (!stands) {
      return;
    }
    double far = t.halfWidth() + 4.6;
    Point end = t.centre().plus(t.mesial().times(far));
    Point2D at = pixel(end);
    Point2D from = pixel(t.centre().plus(t.mesial().times(t.halfWidth() + 0.4)));
    add(line(List.of(from, at), false), "picture-axis");
    List<Point2D> arc = new ArrayList<>();
    for (int i = -5; i <= 5; i++) {
      arc.add(pixel(t.centre().plus(t.direction(i * 2.6).times(far))));
    }
    add(line(arc, false), "picture-arc");
    turn.show(handle(at));
    word(
        Words.of("card.rotation", turn.touch().words(card().chart(), t.tooth())),
        new Point2D(getWidth() - 8, getHeight() - 6),
        HPos.RIGHT,
        VPos.BOTTOM,
        "picture-word");
  }
}
