package saddlewright.desktop.survey.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.shape.Path;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.CrownSide;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.geometry.Point;

/**
 * The tooth from its mesial side between the rods of a surveyor, to lean it to the cheek or to the
 * tongue.
 */
final class SidePicture extends Picture {
  private static final double PIVOT = 4;

  private final TiltTouch tilt;
  private final Knob lean;

  SidePicture(Surveyed card, Tooth tooth, Knob.Writing writing, Consumer<Knob> look) {
    super(card, "picture-side", Words.of("card.side", ToothNames.full(tooth)));
    ask(403, 325);
    boolean crownUp = tooth.arch() == Arch.LOWER;
    tilt =
        new TiltTouch(
            "tilt-across",
            Tilt.BUCCAL,
            Tilt.LINGUAL,
            crownUp,
            new Point(0, crownUp ? -PIVOT : PIVOT));
    lean = new Knob(card, tilt, this::toPicture, writing).onLook(look);
    addKnob(lean);
  }

  private boolean isCrownUp() {
    return card().tooth().arch() == Arch.LOWER;
  }

  private Point turned(double x, double y, double degrees) {
    double r = Math.toRadians(degrees);
    double dy = y + PIVOT;
    return new Point(
        x * Math.cos(r) + dy * Math.sin(r), -x * Math.sin(r) + dy * Math.cos(r) - PIVOT);
  }

  private Point2D onGum(double x, double y) {
    return at(x, isCrownUp() ? y : -y);
  }

  private Point2D onTooth(double x, double y, double degrees) {
    Point p = turned(x, y, degrees);
    return onGum(p.x(), p.y());
  }

  private List<Point2D> moved(List<Point> points, double degrees) {
    return points.stream().map(p -> onTooth(p.x(), p.y(), degrees)).toList();
  }

  @Override
  protected void draw() {
    Tooth tooth = card().tooth();
    ArchChart chart = card().chart();
    PlacedTooth placed = card().form().tooth(tooth);
    CrownSide crown = new CrownSide(chart, placed);
    boolean stands = chart.stands(tooth);
    double above = Math.max(CrownSize.mean(tooth).height(), crown.height()) + 4.2;
    double below = 6.4;
    double wide = getWidth() / (2 * (crown.halfDepth() + 4.2));
    double scale = Math.min(wide, (getHeight() - 46) / (above + below));
    frame(
        scale, getWidth() / 2, isCrownUp() ? above * scale + 6 : getHeight() - above * scale - 30);
    double right = getWidth() / 2 / scale;
    double degrees = tilt.rightDegrees(chart, tooth);
    if (stands) {
      add(line(moved(crown.root().points(), degrees), false), "tooth-root");
    }
    add(line(moved(crown.crown().points(), degrees), true), stands ? "tooth-body" : "tooth-lost");
    gum(crown, right);
    if (stands) {
      rods(crown, degrees, above);
      leaning(crown, degrees, tooth, chart);
    }
    lean.setVisible(stands);
    lean.setFocusTraversable(stands);
    double foot = isCrownUp() ? getHeight() - 4 : 4;
    VPos v = isCrownUp() ? VPos.BOTTOM : VPos.TOP;
    side(tooth, Face.LINGUAL, new Point2D(8, foot), HPos.LEFT, v);
    side(tooth, Face.BUCCAL, new Point2D(getWidth() - 8, foot), HPos.RIGHT, v);
    word(
        Words.of("card.from-mesial"),
        new Point2D(getWidth() / 2, foot),
        HPos.CENTER,
        v,
        "picture-side");
  }

  private void side(Tooth tooth, Face face, Point2D at, HPos across, VPos down) {
    word(Words.capital(ToothNames.face(tooth, face)), at, across, down, "picture-side");
    if (!card().chart().stands(tooth)) {
      return;
    }
    Zone middle = Zone.of(face, java.util.Optional.empty());
    word(
        Items.undercut(middle)
            .value(card().chart(), tooth)
            .filter(d -> d == 0)
            .map(d -> Words.of("card.no-undercut"))
            .orElseGet(() -> Items.undercut(middle).amount(card().chart(), tooth)),
        at.add(0, isCrownUp() ? -26 : 26),
        across,
        down,
        "picture-zone");
  }

  private void gum(CrownSide crown, double right) {
    double neck = crown.halfDepth();
    List<Point> ridge = new ArrayList<>();
    for (int sign : new int[] {-1, 1}) {
      List<Point> flank =
          new ArrayList<>(
              List.of(
                  new Point(sign * (neck + 2), -20),
                  new Point(sign * (neck + 1.9), -9),
                  new Point(sign * (neck + 1.5), -4),
                  new Point(sign * (neck + 0.8), -1.2),
                  new Point(sign * (neck + 0.1), -0.1),
                  new Point(sign * (neck * 0.86), 0.2)));
      if (sign > 0) {
        java.util.Collections.reverse(flank);
      }
      List<Point> curve = saddlewright.geometry.Path.smooth(flank).points();
      add(line(curve.stream().map(p -> onGum(p.x(), p.y())).toList(), false), "gum-margin");
      ridge.addAll(curve);
      if (sign < 0) {
        ridge.add(new Point(0, 0.5));
      }
    }
    Path mass = line(ridge.stream().map(p -> onGum(p.x(), p.y())).toList(), true);
    // Under its border line.
    add(mass, "gum");
  }

  /** The rods touch the crown where it is broadest along the path of insertion. */
  private void rods(CrownSide crown, double degrees, double above) {
    List<Point> turned =
        crown.crown().points().stream().map(p -> turned(p.x(), p.y(), degrees)).toList();
    for (int sign : new int[] {-1, 1}) {
      Point touch =
          turned.stream()
              .max(java.util.Comparator.comparingDouble(p -> sign * p.x()))
              .orElseThrow();
      add(
          line(List.of(onGum(touch.x(), -1.5), onGum(touch.x(), above - 1)), false),
          "picture-path");
      Point2D at = onGum(touch.x(), touch.y());
      add(line(List.of(at.add(-5, 0), at.add(5, 0)), false), "survey-line");
    }
  }

  private void leaning(CrownSide crown, double degrees, Tooth tooth, ArchChart chart) {
    double far = crown.height() + 2.6;
    Point2D top = onTooth(0, far, degrees);
    add(line(List.of(onTooth(0, crown.height() - 1.6, degrees), top), false), "picture-axis");
    List<Point2D> arc = new ArrayList<>();
    for (int i = -4; i <= 4; i++) {
      arc.add(onTooth(0, far, degrees + i * 2.2));
    }
    add(line(arc, false), "picture-arc");
    lean.show(handle(top));
    word(
        tilt.inThisView(chart, tooth),
        top.add(degrees > 0 ? -46 : 46, 0),
        degrees > 0 ? HPos.RIGHT : HPos.LEFT,
        VPos.CENTER,
        "picture-word");
  }
}
