package saddlewright.desktop.survey.tissue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.PublishedRange;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.CrownSide;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * A section through the lingual sulcus beside a lower tooth: the functional depth of the floor of
 * the mouth, and the height of bar that it leaves by the limits of the case's school.
 */
final class SulcusSection extends Picture {
  /** Thickness of a half-pear bar at its foot, mm (common practice). */
  private static final double BAR_THICK = 2;

  private final Knob floor;

  SulcusSection(Surveyed survey, Knob.Writing writing, Consumer<Knob> look) {
    super(survey, "sulcus-section", Words.of("tissue.section-name"));
    ask(340, 312);

    NumberTouch touch =
        new NumberTouch(
            "floor",
            Items.LINGUAL_DEPTH,
            List.of(),
            0.5,
            0.1,
            SulcusSection::usual,
            new Vector(0, -1));
    floor = new Knob(survey, touch, this::toPicture, writing).onLook(look);
    addKnob(floor);
  }

  private static double usual(Tooth t) {
    return Items.LINGUAL_DEPTH
        .range(t)
        .flatMap(PublishedRange::mean)
        .map(m -> Math.round(m * 2) / 2.0)
        .orElse(8.0);
  }

  @Override
  protected void draw() {
    Tooth tooth = card().tooth();
    ArchChart chart = card().chart();
    CrownSide crown = new CrownSide(chart, card().form().tooth(tooth));
    Optional<Double> charted = Items.LINGUAL_DEPTH.value(chart, tooth);
    double depth = charted.orElseGet(() -> usual(tooth));
    BarRoom room = BarRoom.of(depth, card().table().current().profile());
    double scale = Math.min(getWidth() / 25, (getHeight() - 62) / (crown.height() + 16));
    double wall = -crown.halfDepth() - 0.6;
    frame(scale, getWidth() * 0.27, 24 + crown.height() * scale);
    // The tongue's side lies to the right: the picture is turned so that lingual points there.
    gum(wall, depth);
    if (chart.stands(tooth)) {
      add(line(turned(crown.crown().points()), true), "tooth-body");
    } else {
      add(line(turned(crown.crown().points()), true), "tooth-lost");
    }
    bar(room, wall);
    measures(room, wall, depth);
    Point2D at = on(wall - 2.6, -depth);
    floor.show(handle(at));
    word(
        Words.of("tissue.section", card().table().notationProperty().get().format(tooth)),
        new Point2D(8, 4),
        HPos.LEFT,
        VPos.TOP,
        "picture-side");
    word(
        ToothNames.full(tooth),
        new Point2D(getWidth() - 8, 4),
        HPos.RIGHT,
        VPos.TOP,
        "picture-side");
    String kind =
        Words.of(
            "tissue.kind." + room.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
            Words.mm(room.lingual()),
            Words.mm(room.lingualLeast()),
            Words.mm(room.sublingual()));
    String said =
        charted.isEmpty()
            ? Words.of("tissue.not-charted", Words.mm(depth))
            : Words.of(
                    room.takesBar() ? "tissue.leaves" : "tissue.lacks",
                    Words.mm(depth),
                    Words.mm(room.left()),
                    Words.mm(room.bar()))
                + "\n"
                + kind;
    word(
        said,
        new Point2D(8, getHeight() - 4),
        HPos.LEFT,
        VPos.BOTTOM,
        "picture-word",
        "section-said");
  }

  /** Lingual to the right. */
  private Point2D on(double buccal, double y) {
    return at(-buccal, y);
  }

  private List<Point2D> turned(List<Point> points) {
    return points.stream().map(p -> on(p.x(), p.y())).toList();
  }

  private void gum(double wall, double depth) {
    List<Point> face =
        Path.smooth(
                List.of(
                    new Point(wall + 0.5, 0.3),
                    new Point(wall - 0.2, -0.4),
                    new Point(wall - 0.3, -0.35 * depth),
                    new Point(wall - 0.6, -0.8 * depth),
                    new Point(wall - 1.4, -depth + 0.25),
                    new Point(wall - 3.2, -depth),
                    new Point(wall - 7, -depth + 0.5),
                    new Point(wall - 12, -depth + 1.3),
                    new Point(wall - 30, -depth + 1.6)))
            .points();
    List<Point2D> line = turned(face);
    List<Point> labial =
        Path.smooth(
                List.of(
                    new Point(-wall + 5.5, -30),
                    new Point(-wall + 4.6, -16),
                    new Point(-wall + 2.6, -7),
                    new Point(-wall + 0.9, -1.6),
                    new Point(-wall + 0.2, -0.2),
                    new Point(-wall - 0.6, 0.3)))
            .points();
    List<Point2D> whole = new ArrayList<>(line);
    whole.add(on(wall - 30, -30));
    whole.addAll(turned(labial));
    add(line(whole, true), "gum");
    add(line(line, false), "gum-margin");
    add(line(turned(labial), false), "gum-margin");
  }

  /** The bar where it would lie: a half pear, its thicker part below. */
  private void bar(BarRoom room, double wall) {
    double top = -room.border();
    double height = room.takesBar() ? room.bar() : room.left();
    if (height < 0.3) {
      return;
    }
    double foot = top - height;
    double x = wall - 0.75;
    List<Point> knots =
        List.of(
            new Point(x - 0.05 * BAR_THICK, top),
            new Point(x - 0.4 * BAR_THICK, top - 0.22 * height),
            new Point(x - 0.92 * BAR_THICK, top - 0.6 * height),
            new Point(x - 0.9 * BAR_THICK, top - 0.86 * height),
            new Point(x - 0.5 * BAR_THICK, foot),
            new Point(x - 0.08 * BAR_THICK, foot + 0.05 * height),
            new Point(x, top - 0.7 * height),
            new Point(x, top - 0.3 * height));
    add(
        line(turned(saddlewright.geometry.Outline.smooth(knots).points()), true),
        room.takesBar() ? "bar-section" : "bar-section-low");
  }

  private void measures(BarRoom room, double wall, double depth) {
    double x = wall - 5;
    double[] stops = {
      0, -room.border(), -room.border() - Math.min(room.bar(), room.left()), -depth
    };
    String[] words = {
      Words.of("tissue.clear", Words.mm(room.border())),
      Words.of("tissue.bar", Words.mm(Math.min(room.bar(), room.left()))),
      Words.of(
          "tissue.above-floor", Words.mm(depth - room.border() - Math.min(room.bar(), room.left())))
    };
    for (int i = 0; i < stops.length; i++) {
      add(line(List.of(on(wall - 0.4, stops[i]), on(x - 0.4, stops[i])), false), "picture-axis");
    }
    add(line(List.of(on(x, 0), on(x, -depth)), false), "picture-measure");
    for (int i = 0; i < words.length; i++) {
      double from = stops[i];
      double to = stops[i + 1];
      if (from - to > 0.25) {
        word(words[i], on(x - 0.6, (from + to) / 2), HPos.LEFT, VPos.CENTER, "picture-word");
      }
    }
  }
}
