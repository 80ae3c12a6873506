package saddlewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.ArchForm;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/** Draws what the mouth has besides teeth: margins, ridges, sulci, palate, pads, frena, tori. */
final class AnatomyDrawer {
  private static final double MARGIN_WIDTH = 0.15;
  private static final double FINE = 0.14;
  private static final double FINEST = 0.1;
  private static final List<Double> SOLID = List.of();
  private static final List<Double> LONG_DASH = List.of(1.6, 1.0);
  private static final List<Double> SHORT_DASH = List.of(0.6, 0.8);
  private static final List<Double> DASH_DOT = List.of(2.2, 0.7, 0.35, 0.7);

  private final ArchForm form;
  private final List<Mark> out = new ArrayList<>();

  private AnatomyDrawer(ArchForm form) {
    this.form = form;
  }

  static List<Mark> marks(ArchForm form, DrawingOptions options) {
    if (!options.anatomy()) {
      return List.of();
    }
    AnatomyDrawer drawer = new AnatomyDrawer(form);
    drawer.draw();
    return drawer.out;
  }

  private void draw() {
    out.add(new Mark.Fill(Layer.TISSUE, Ink.MUCOSA, Optional.empty(), List.of(mucosa()), 1));
    line(Ink.GINGIVA, FINE, SOLID, form.buccalSulcus());
    pads();
    if (form.arch() == Arch.UPPER) {
      palate();
    } else {
      line(Ink.GINGIVA, FINE, LONG_DASH, form.lingualSulcus());
      form.lingualFrenum().ifPresent(f -> line(Ink.GINGIVA, MARGIN_WIDTH, SOLID, f));
    }
    form.frena().forEach(f -> line(Ink.GINGIVA, FINEST, SOLID, f));
    form.chartedFrena().forEach(f -> line(Ink.GINGIVA, 1.8 * MARGIN_WIDTH, SOLID, f));
    Region pads = form.pad(Side.RIGHT).toRegion().plus(form.pad(Side.LEFT).toRegion());
    pads.outside(form.ridgeCrest()).stream()
        .max(Comparator.comparingDouble(Path::length))
        .ifPresent(crest -> line(Ink.ANATOMY, FINE, SHORT_DASH, crest));
    line(Ink.GINGIVA, MARGIN_WIDTH, SOLID, form.buccalMargin());
    line(Ink.GINGIVA, MARGIN_WIDTH, SOLID, form.lingualMargin());
    for (Torus torus : Torus.values()) {
      form.torus(torus).ifPresent(this::torus);
    }
  }

  /** All covered by mucosa that shows in plan: to the soft palate, or to the floor of the mouth. */
  private Outline mucosa() {
    List<Point> points = new ArrayList<>(form.buccalSulcus().points());
    Path inner = form.arch() == Arch.UPPER ? form.palateLimit() : form.lingualSulcus();
    points.addAll(inner.reversed().points());
    return Outline.of(points);
  }

  private void pads() {
    for (Side side : Side.values()) {
      Outline pad = form.pad(side);
      line(Ink.GINGIVA, FINE, SOLID, pad.toPath());
    }
    form.hamularNotches().forEach(n -> line(Ink.GINGIVA, MARGIN_WIDTH, SOLID, n));
  }

  private void palate() {
    form.vault().forEach(v -> line(Ink.ANATOMY, FINEST, SHORT_DASH, v));
    form.rugae().forEach(r -> line(Ink.GINGIVA, FINE, SOLID, r));
    form.raphe().ifPresent(r -> line(Ink.ANATOMY, FINE, DASH_DOT, r));
    form.papilla().ifPresent(p -> line(Ink.GINGIVA, FINE, SOLID, p.toPath()));
    line(Ink.ANATOMY, FINE, LONG_DASH, form.palateLimit());
    out.add(new Mark.Dots(Layer.ANATOMY, Ink.ANATOMY, Optional.empty(), form.foveae(), 0.3));
  }

  /** A rise of bone: its outline, and a second line inside it like a contour on a map. */
  private void torus(Outline torus) {
    Point middle = torus.centroid();
    List<Point> inner = new ArrayList<>();
    for (Point p : torus.points()) {
      Vector v = middle.to(p);
      inner.add(middle.plus(v.times(0.66)));
    }
    line(Ink.ANATOMY, 0.2, SOLID, torus.toPath());
    line(Ink.ANATOMY, FINEST, SHORT_DASH, Outline.of(inner).toPath());
  }

  private void line(Ink ink, double width, List<Double> dash, Path path) {
    out.add(
        new Mark.Stroke(Layer.ANATOMY, ink, Optional.empty(), List.of(path), false, width, dash));
  }
}
