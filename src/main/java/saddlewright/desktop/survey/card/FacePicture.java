package saddlewright.desktop.survey.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.CrownFace;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * The tooth from its buccal or lingual side: how low the undercuts lie under the survey line, how
 * tall the crown is, and how it leans along the arch. An upper tooth hangs down as in the mouth.
 */
final class FacePicture extends Picture {
  /** The tooth leans about a place this far below the margin, mm. */
  private static final double PIVOT = 4;

  /** Where the end zones lie, as a share of the half width. */
  private static final double ZONE_AT = 0.62;

  /** An undercut whose height is not measured is drawn in the middle of the gingival third. */
  private static final double USUAL_HEIGHT = 1.0 / 6;

  /** The bulge of a crown where nothing is charted, as a share of its height. */
  private static final double BULGE = 0.5;

  private final Face face;
  private final Map<Zone, Knob> heights = new LinkedHashMap<>();
  private final Optional<Knob> edge;
  private final Optional<Knob> margin;
  private final Optional<TiltTouch> tilt;
  private final Optional<Knob> lean;
  private double settled;
  private double live;
  private double heightBefore;

  FacePicture(Surveyed card, Tooth tooth, Face face, Knob.Writing writing, Consumer<Knob> look) {
    super(
        card,
        "picture-" + face.name().toLowerCase(Locale.ROOT),
        Words.of("card.face", ToothNames.full(tooth), ToothNames.face(tooth, face)));
    ask(403, 325);
    this.face = face;
    boolean crownUp = tooth.arch() == Arch.LOWER;
    Vector occlusal = new Vector(0, crownUp ? 1 : -1);
    for (End end : List.of(End.MESIAL, End.DISTAL)) {
      if (end == End.DISTAL) {
        put(Zone.of(face, Optional.empty()), occlusal, writing, look);
      }
      put(Zone.of(face, Optional.of(end)), occlusal, writing, look);
    }
    if (face == Face.BUCCAL) {
      edge = Optional.of(crown("crown-edge", occlusal, writing, look));
      margin = Optional.of(crown("crown-margin", occlusal.negated(), writing, look));
      boolean mesialRight = isMesialRight(tooth);
      TiltTouch t =
          new TiltTouch(
              "tilt-along",
              mesialRight ? Tilt.MESIAL : Tilt.DISTAL,
              mesialRight ? Tilt.DISTAL : Tilt.MESIAL,
              crownUp,
              new Point(0, crownUp ? -PIVOT : PIVOT));
      tilt = Optional.of(t);
      lean = Optional.of(new Knob(card, t, this::toPicture, writing).onLook(look));
      addKnob(edge.get());
      addKnob(margin.get());
      addKnob(lean.get());
    } else {
      edge = Optional.empty();
      margin = Optional.empty();
      tilt = Optional.empty();
      lean = Optional.empty();
    }
  }

  private void put(Zone z, Vector occlusal, Knob.Writing writing, Consumer<Knob> look) {
    NumberTouch touch =
        new NumberTouch(
            "height-" + z.name().toLowerCase(Locale.ROOT).replace('_', '-'),
            Items.undercutHeight(z),
            List.of(),
            0.5,
            0.1,
            t -> Math.round(10 * USUAL_HEIGHT * CrownSize.mean(t).height()) / 10.0,
            occlusal);
    Knob k = new Knob(card(), touch, this::toPicture, writing).onLook(look);
    heights.put(z, k);
    addKnob(k);
  }

  private Knob crown(String id, Vector towards, Knob.Writing writing, Consumer<Knob> look) {
    NumberTouch touch =
        new NumberTouch(
            id, Items.CROWN_HEIGHT, List.of(), 0.5, 0.1, t -> CrownSize.mean(t).height(), towards);
    return new Knob(card(), touch, this::toPicture, writing).onLook(look);
  }

  private boolean isMesialRight(Tooth tooth) {
    return (face == Face.BUCCAL) == (tooth.side() == Side.RIGHT);
  }

  private boolean isCrownUp() {
    return card().tooth().arch() == Arch.LOWER;
  }

  /** The place in pixels of a point of the tooth, which leans. */
  private Point2D onTooth(double x, double y, double degrees) {
    double sx = isMesialRight(card().tooth()) ? x : -x;
    double r = Math.toRadians(degrees);
    double dy = y + PIVOT;
    return onGum(sx * Math.cos(r) + dy * Math.sin(r), -sx * Math.sin(r) + dy * Math.cos(r) - PIVOT);
  }

  /** The place in pixels of a point of the jaw: x to the right, y towards the occlusal. */
  private Point2D onGum(double right, double y) {
    return at(right, isCrownUp() ? y : -y);
  }

  /** Degrees by which the crown leans to the right of this picture. */
  private double degrees() {
    boolean right = isMesialRight(card().tooth());
    TiltTouch along =
        new TiltTouch(
            "",
            right ? Tilt.MESIAL : Tilt.DISTAL,
            right ? Tilt.DISTAL : Tilt.MESIAL,
            isCrownUp(),
            Point.ORIGIN);
    return along.rightDegrees(card().chart(), card().tooth());
  }

  @Override
  protected void draw() {
    Tooth tooth = card().tooth();
    ArchChart chart = card().chart();
    PlacedTooth placed = card().form().tooth(tooth);
    CrownFace crown = new CrownFace(chart, placed, face);
    double stands = settledHeight(tooth);
    double above = Math.max(CrownSize.mean(tooth).height(), stands) + 4.2;
    double below = 6.4;
    double wide = getWidth() / (2 * (crown.halfWidth() + 4.6));
    double scale = Math.min(wide, (getHeight() - 46) / (above + below));
    double occlusalRoom = isCrownUp() ? above * scale + 6 : getHeight() - above * scale - 30;
    frame(scale, getWidth() / 2, occlusalRoom);
    shift(crown.height());
    double shift = settled + live;
    double degrees = degrees();
    double right = getWidth() / 2 / scale;
    boolean there = chart.stands(tooth);
    if (there) {
      for (Path root : crown.roots()) {
        add(line(moved(root.points(), degrees, -shift), false), "tooth-root");
      }
    }
    add(
        line(moved(crown.crown().points(), degrees, -shift), true),
        there ? "tooth-body" : "tooth-lost");
    if (there) {
      for (Path d : crown.details()) {
        add(line(moved(d.points(), degrees, -shift), false), "tooth-detail");
      }
    }
    gum(crown, right, shift, there);
    survey(crown, degrees, shift, tooth, chart);
    add(
        line(List.of(onGum(-right + 1.4, -4), onGum(-right + 1.4, above - 1)), false),
        "picture-path");
    word(
        Words.of("card.path"),
        onGum(-right + 1.8, above - 1.2),
        HPos.LEFT,
        isCrownUp() ? VPos.TOP : VPos.BOTTOM,
        "picture-word");
    word(
        Words.capital(ToothNames.face(tooth, face)),
        new Point2D(getWidth() / 2, isCrownUp() ? getHeight() - 4 : 4),
        HPos.CENTER,
        isCrownUp() ? VPos.BOTTOM : VPos.TOP,
        "picture-side");
    boolean mesialRight = isMesialRight(tooth);
    double side = isCrownUp() ? getHeight() - 4 : 4;
    VPos v = isCrownUp() ? VPos.BOTTOM : VPos.TOP;
    word(
        Words.of(mesialRight ? "card.distal" : "card.mesial"),
        new Point2D(8, side),
        HPos.LEFT,
        v,
        "picture-side");
    word(
        Words.of(mesialRight ? "card.mesial" : "card.distal"),
        new Point2D(getWidth() - 8, side),
        HPos.RIGHT,
        v,
        "picture-side");
    if (lean.isPresent()) {
      measured(crown, shift, tooth, chart);
      leaning(crown, degrees, shift, tooth, chart);
    }
  }

  /** While the margin is dragged the edge stays where it is, and afterwards too. */
  private void shift(double height) {
    if (margin.isPresent() && margin.get().isDragging()) {
      if (live == 0) {
        heightBefore = settledHeight(card().tooth());
      }
      live = height - heightBefore;
    } else if (live != 0) {
      settled += Math.abs(heightBefore + live - height) < 1e-6 ? live : 0;
      live = 0;
    }
  }

  private double settledHeight(Tooth tooth) {
    return Items.CROWN_HEIGHT.value(card().settled(), tooth).orElse(CrownSize.mean(tooth).height());
  }

  private List<Point2D> moved(List<Point> points, double degrees, double dy) {
    return points.stream().map(p -> onTooth(p.x(), p.y() + dy, degrees)).toList();
  }

  private void gum(CrownFace crown, double right, double shift, boolean scalloped) {
    List<Point2D> edgeOfGum = new ArrayList<>();
    for (Point p : crown.margin(right + 1)) {
      edgeOfGum.add(onGum(p.x(), (scalloped ? p.y() : 0) - shift));
    }
    List<Point2D> whole = new ArrayList<>(edgeOfGum);
    whole.add(onGum(right + 1, -20));
    whole.add(onGum(-right - 1, -20));
    add(line(whole, true), "gum");
    add(line(edgeOfGum, false), "gum-margin");
  }

  private void survey(CrownFace crown, double degrees, double shift, Tooth tooth, ArchChart chart) {
    List<Point> bulge = new ArrayList<>();
    for (Map.Entry<Zone, Knob> e : heights.entrySet()) {
      Zone z = e.getKey();
      double x = z.end().map(d -> d == End.MESIAL ? ZONE_AT : -ZONE_AT).orElse(0.0);
      double at = x * crown.halfWidth();
      Optional<Undercut> u = Optional.ofNullable(chart.tooth(tooth).undercuts().get(z));
      boolean there = u.filter(v -> v.depth() > 0).isPresent() && chart.stands(tooth);
      double low = u.flatMap(Undercut::height).orElse(USUAL_HEIGHT * crown.height());
      double line =
          u.isEmpty()
              ? BULGE * crown.height()
              : there
                  ? Math.min(
                      0.93 * crown.height(),
                      Math.max(0.42 * crown.height(), low + 0.2 * crown.height()))
                  : 0.04 * crown.height();
      bulge.add(new Point(at, line));
      Knob knob = e.getValue();
      knob.setVisible(there);
      knob.setFocusTraversable(there);
      double sx = isMesialRight(tooth) ? at : -at;
      if (there) {
        Point2D place = onTooth(at, low - shift, degrees);
        Point2D top = onTooth(at, line - shift, degrees);
        List<Point2D> under = new ArrayList<>();
        double half = 0.26 * crown.halfWidth();
        under.add(onTooth(at - half, line - shift, degrees));
        under.add(onTooth(at + half, line - shift, degrees));
        under.add(onTooth(at + 0.6 * half, low - shift, degrees));
        under.add(onTooth(at - 0.6 * half, low - shift, degrees));
        javafx.scene.shape.Path below = line(under, true);
        below.getStyleClass().add("zone-filled");
        Line drop = new Line(top.getX(), top.getY(), place.getX(), place.getY());
        add(drop, "picture-axis");
        // All from the survey line down can be dragged, not the handle alone.
        List<Node> nodes = new ArrayList<>(List.of(handle(place)));
        nodes.add(0, below);
        knob.show(nodes.toArray(Node[]::new));
      }
      if (chart.stands(tooth)) {
        zoneWords(z, u, sx);
      }
    }
    bulge.sort(java.util.Comparator.comparingDouble(Point::x));
    Point first = bulge.get(0);
    Point last = bulge.get(bulge.size() - 1);
    bulge.add(0, new Point(-0.98 * crown.halfWidth(), (first.y() + 0.55 * crown.height()) / 2));
    bulge.add(new Point(0.98 * crown.halfWidth(), (last.y() + 0.6 * crown.height()) / 2));
    boolean charted =
        heights.keySet().stream().anyMatch(chart.tooth(tooth).undercuts()::containsKey);
    if (chart.stands(tooth)) {
      add(
          line(moved(Path.smooth(bulge).points(), degrees, -shift), false),
          charted ? "survey-line" : "survey-line-open");
    }
  }

  /** Three columns below the gingival margin say of each zone what is charted. */
  private void zoneWords(Zone z, Optional<Undercut> u, double sx) {
    double share = z.end().isEmpty() ? 0.5 : sx > 0 ? 0.82 : 0.18;
    double x = getWidth() * share;
    double y = isCrownUp() ? getHeight() - 44 : 44;
    String depth =
        u.map(
                v ->
                    v.depth() == 0
                        ? Words.of("card.no-undercut")
                        : Items.undercut(z).amount(v.depth()))
            .orElseGet(() -> Words.of("survey.uncharted"));
    String height =
        u.filter(v -> v.depth() > 0)
            .map(
                v ->
                    v.height()
                        .map(h -> Words.of("card.up", Words.mm(h)))
                        .orElseGet(() -> Words.of("card.up-unmeasured")))
            .orElse("");
    word(
        height.isEmpty() ? depth : depth + "\n" + height,
        new Point2D(x, y),
        HPos.CENTER,
        VPos.CENTER,
        "picture-zone");
  }

  private void measured(CrownFace crown, double shift, Tooth tooth, ArchChart chart) {
    boolean stands = chart.stands(tooth);
    double x = crown.halfWidth() + 2.1;
    Point2D top = onGum(x, crown.height() - shift);
    Point2D foot = onGum(x, -shift);
    edge.orElseThrow().setVisible(stands);
    margin.orElseThrow().setVisible(stands);
    edge.orElseThrow().setFocusTraversable(stands);
    margin.orElseThrow().setFocusTraversable(stands);
    if (!stands) {
      return;
    }
    add(line(List.of(top, foot), false), "picture-measure");
    add(
        line(List.of(onGum(0.3 * crown.halfWidth(), crown.height() - shift), top), false),
        "picture-axis");
    add(line(List.of(onGum(0.3 * crown.halfWidth(), -shift), foot), false), "picture-axis");
    edge.get().show(handle(top));
    margin.get().show(handle(foot));
    Point2D middle = top.midpoint(foot);
    boolean charted = chart.tooth(tooth).crownHeight().isPresent();
    String text =
        charted ? Words.mm(crown.height()) : Words.of("card.mean-height", Words.mm(crown.height()));
    word(text, middle.add(8, 0), HPos.LEFT, VPos.CENTER, "picture-word");
  }

  private void leaning(
      CrownFace crown, double degrees, double shift, Tooth tooth, ArchChart chart) {
    Knob knob = lean.orElseThrow();
    boolean stands = chart.stands(tooth);
    knob.setVisible(stands);
    knob.setFocusTraversable(stands);
    if (!stands) {
      return;
    }
    double far = crown.height() - shift + 2.6;
    Point2D top = onTooth(0, far, degrees);
    add(
        line(List.of(onTooth(0, crown.height() - shift - 0.6, degrees), top), false),
        "picture-axis");
    List<Point2D> arc = new ArrayList<>();
    for (int i = -4; i <= 4; i++) {
      arc.add(onTooth(0, far, degrees + i * 2.2));
    }
    add(line(arc, false), "picture-arc");
    knob.show(handle(top));
    word(
        tilt.orElseThrow().inThisView(chart, tooth),
        top.add(degrees > 0 ? -46 : 46, 0),
        degrees > 0 ? HPos.RIGHT : HPos.LEFT,
        VPos.CENTER,
        "picture-word");
  }
}
