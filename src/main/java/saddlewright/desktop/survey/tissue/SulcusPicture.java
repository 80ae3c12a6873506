package saddlewright.desktop.survey.tissue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Face;
import saddlewright.dentition.PublishedRange;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.NumberItem;
import saddlewright.desktop.survey.picture.CrownFace;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;

/**
 * An arch unrolled along its gingival margin, with the line of its sulcus below it: the knob under
 * each tooth sets the depth there. Lines across show the depths that the school of the case asks
 * for.
 */
final class SulcusPicture extends Picture {
  /** Depth that is shown at most, mm; deeper lines lie at the edge. */
  private static final double SHOWN = 17;

  private static final double CROWNS = 12.5;
  private static final double FRENA = 3.4;
  private static final double HALF_STEP = 2;

  private final Face face;
  private final NumberItem item;
  private final Map<Tooth, Knob> depths = new EnumMap<>(Tooth.class);
  private final Map<Tooth, Knob> frena = new EnumMap<>(Tooth.class);
  private double deepened = 1;

  SulcusPicture(Surveyed survey, Arch arch, Face face, Knob.Writing writing, Consumer<Knob> look) {
    super(
        survey,
        "sulcus-" + face.name().toLowerCase(Locale.ROOT),
        Words.of(
            "tissue.picture." + face.name().toLowerCase(Locale.ROOT),
            Words.of("entry.arch." + arch.code())));
    ask(780, 281);

    this.face = face;
    this.item = face == Face.LINGUAL ? Items.LINGUAL_DEPTH : Items.BUCCAL_DEPTH;
    Vector deeper = new Vector(0, arch == Arch.LOWER ? -1 : 1);
    NumberTouch touch =
        new NumberTouch(
            face == Face.LINGUAL ? "lingual-depth" : "buccal-depth",
            item,
            List.of(),
            0.5,
            0.1,
            this::usual,
            deeper);
    for (Tooth t : Tooth.in(arch)) {
      Knob k = new Knob(survey, touch, t, this::dragged, writing).onLook(look);
      depths.put(t, k);
      addKnob(k);
    }
    if (face == Face.BUCCAL) {
      for (Tooth t : Tooth.in(arch)) {
        Knob k = new Knob(survey, new FrenumTouch(), t, this::toPicture, writing).onLook(look);
        frena.put(t, k);
        addKnob(k);
      }
    }
  }

  /** The published mean, to half a millimetre: where the line lies until it is charted. */
  private double usual(Tooth tooth) {
    double mean = item.range(tooth).flatMap(PublishedRange::mean).orElse(8.0);
    return Math.round(mean * HALF_STEP) / HALF_STEP;
  }

  private boolean isUpper() {
    return card().tooth().arch() == Arch.UPPER;
  }

  /**
   * The place of millimetres along the row and towards the crowns; depths are drawn larger than
   * widths.
   */
  private Point2D on(double along, double occlusal) {
    double y = occlusal < 0 ? occlusal * deepened : occlusal;
    return at(along, isUpper() ? -y : y);
  }

  /** Millimetres as they are dragged: a knob moves by as much as the depth drawn. */
  private Point dragged(Point2D scene) {
    Point p = toPicture(scene);
    return new Point(p.x(), p.y() / deepened);
  }

  @Override
  protected void draw() {
    Arch arch = card().tooth().arch();
    ArchChart chart = card().chart();
    Map<Tooth, Double> middles = new EnumMap<>(Tooth.class);
    Map<Tooth, Double> widths = new EnumMap<>(Tooth.class);
    double row = 0;
    for (Tooth t : Tooth.in(arch)) {
      double w = chart.tooth(t).mesiodistal().orElse(CrownSize.mean(t).width());
      widths.put(t, w);
      middles.put(t, row + w / 2);
      row += w;
    }
    double half = row / 2;
    middles.replaceAll((t, x) -> x - half);
    double below = SHOWN + (face == Face.BUCCAL ? FRENA : 1.8);
    double scale = Math.min(getWidth() / (row + 9), (getHeight() - 8) / (CROWNS + below));
    deepened = Math.max(1, ((getHeight() - 8) / scale - CROWNS) / below);
    frame(scale, getWidth() / 2, isUpper() ? getHeight() - 4 - CROWNS * scale : 4 + CROWNS * scale);
    gum(middles, half);
    for (Tooth t : Tooth.in(arch)) {
      crown(t, middles.get(t), chart);
    }
    guides(half);
    sulcus(middles, chart);
    frena.forEach((t, k) -> frenum(t, middles.get(t), k, chart));
    if (face == Face.BUCCAL) {
      word(
          Words.of("tissue.frenum"),
          on(-half - 4.2, -SHOWN - FRENA / 2),
          HPos.LEFT,
          VPos.CENTER,
          "picture-side");
    }
    word(
        Words.of("tissue." + face.name().toLowerCase(Locale.ROOT)),
        on(-half - 4.2, CROWNS - 0.6),
        HPos.LEFT,
        isUpper() ? VPos.BOTTOM : VPos.TOP,
        "picture-side");
  }

  private double depth(Tooth t, ArchChart chart) {
    return Math.min(SHOWN, item.value(chart, t).orElseGet(() -> usual(t)));
  }

  private void gum(Map<Tooth, Double> middles, double half) {
    ArchChart chart = card().chart();
    List<Point2D> whole = new ArrayList<>();
    whole.add(on(-half - 2, 0));
    whole.add(on(half + 2, 0));
    List<Point> line = floor(middles, chart);
    for (int i = line.size() - 1; i >= 0; i--) {
      whole.add(on(line.get(i).x(), line.get(i).y()));
    }
    add(line(whole, true), "gum");
  }

  /** The line of the sulcus, from the patient's right to the left. */
  private List<Point> floor(Map<Tooth, Double> middles, ArchChart chart) {
    List<Point> knots = new ArrayList<>();
    List<Tooth> row = Tooth.in(card().tooth().arch());
    Tooth first = row.get(0);
    Tooth last = row.get(row.size() - 1);
    knots.add(new Point(middles.get(first) - 6, -depth(first, chart)));
    row.forEach(t -> knots.add(new Point(middles.get(t), -depth(t, chart))));
    knots.add(new Point(middles.get(last) + 6, -depth(last, chart)));
    return saddlewright.geometry.Path.smooth(knots).points();
  }

  private void crown(Tooth t, double middle, ArchChart chart) {
    boolean stands = chart.stands(t);
    PlacedTooth placed = card().form().tooth(t);
    // Seen from inside the mouth mesial lies the same way along the unrolled row as from outside.
    boolean mesialRight = t.side() == Side.RIGHT;
    if (!placed.isClosed()) {
      CrownFace crown = new CrownFace(chart, placed, face);
      List<Point2D> outline =
          crown.crown().points().stream()
              .map(p -> on(middle + (mesialRight ? p.x() : -p.x()) * 0.96, p.y() * 0.92))
              .toList();
      add(line(outline, true), stands ? "tooth-body" : "tooth-lost");
    }
    Point2D at = on(middle, 2.6);
    word(
        card().table().notationProperty().get().format(t),
        at,
        HPos.CENTER,
        VPos.CENTER,
        stands ? "site-number" : "picture-open");
  }

  private void guides(double half) {
    Profile school = card().table().current().profile();
    List<Quantity> asked =
        face == Face.LINGUAL
            ? List.of(
                Quantity.LINGUAL_BAR_DEPTH,
                Quantity.LINGUAL_BAR_DEPTH_LEAST,
                Quantity.SUBLINGUAL_BAR_DEPTH)
            : List.of(Quantity.BAR_ARM_SULCUS, Quantity.BAR_ARM_SULCUS_AMPLE);
    double last = Double.NaN;
    boolean left = true;
    for (Quantity q : asked) {
      double mm = school.limit(q);
      if (mm == last) {
        continue;
      }
      last = mm;
      add(line(List.of(on(-half - 2, -mm), on(half + 2, -mm)), false), "picture-path");
      // At either end in turn, so that lines close to each other keep their words apart.
      word(
          Words.of(
              "tissue.guide." + q.name().toLowerCase(Locale.ROOT).replace('_', '-'), Words.mm(mm)),
          on(left ? -half - 1.6 : half + 1.6, -mm),
          left ? HPos.LEFT : HPos.RIGHT,
          VPos.CENTER,
          "guide-word");
      left = !left;
    }
  }

  private void sulcus(Map<Tooth, Double> middles, ArchChart chart) {
    boolean any = middles.keySet().stream().anyMatch(t -> item.value(chart, t).isPresent());
    List<Point2D> points = floor(middles, chart).stream().map(p -> on(p.x(), p.y())).toList();
    add(line(points, false), any ? "sulcus-line" : "sulcus-line-open");
    for (Map.Entry<Tooth, Knob> e : depths.entrySet()) {
      Tooth t = e.getKey();
      Optional<Double> value = item.value(chart, t);
      Point2D place = on(middles.get(t), -depth(t, chart));
      List<Node> nodes = new ArrayList<>(List.of(handle(place)));
      if (value.isEmpty()) {
        nodes.get(1).getStyleClass().add("knob-open");
      }
      e.getValue().show(nodes.toArray(Node[]::new));
      word(
          value.map(Words::number).orElseGet(() -> Words.of("card.open")),
          place.add(0, isUpper() ? -12 : 12),
          HPos.CENTER,
          isUpper() ? VPos.BOTTOM : VPos.TOP,
          value.isEmpty() ? "picture-open" : "depth-number");
    }
  }

  private void frenum(Tooth t, double middle, Knob knob, ArchChart chart) {
    boolean there = chart.softTissues().frena().contains(t);
    Point2D at = on(middle, -SHOWN - FRENA / 2);
    Rectangle room =
        new Rectangle(
            at.getX() - Knob.TARGET / 2, at.getY() - Knob.TARGET / 2, Knob.TARGET, Knob.TARGET);
    room.getStyleClass().add("knob-room");
    if (!there) {
      Circle dot = new Circle(at.getX(), at.getY(), 3);
      dot.getStyleClass().add("frenum-none");
      knob.show(room, dot);
      return;
    }
    double w = 5;
    double up = isUpper() ? 1 : -1;
    Path fold =
        line(
            List.of(at.add(-w, up * -8), at.add(0, up * 9), at.add(w, up * -8), at.add(0, up * -3)),
            true);
    fold.getStyleClass().add("frenum-fold");
    knob.show(room, fold);
  }
}
