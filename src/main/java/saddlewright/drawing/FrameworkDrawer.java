package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Region;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;
import saddlewright.layout.Substance;

/**
 * Draws all cast metal as the one casting that it is: one outline with filleted inner corners,
 * hatched inside. What the major connector does under the acrylic of a saddle is dashed.
 */
final class FrameworkDrawer {
  /** Radius of the fillets where parts of the casting meet, mm (from memory of waxing up). */
  private static final double FILLET = 0.7;

  private static final double HATCH_DEGREES = 45;
  private static final double HATCH_PITCH = 0.95;
  private static final double HATCH_WIDTH = 0.11;
  private static final double OUTLINE_WIDTH = 0.35;
  private static final List<Double> DASH = List.of(1.1, 0.7);

  private FrameworkDrawer() {}

  /** All that shows in the drawing of the casting: its parts, and the saddles that hide them. */
  static List<Laid> parts(Layout layout) {
    return layout.all().stream()
        .filter(
            l -> {
              Component c = l.component();
              return c instanceof Saddle
                  || c instanceof MajorConnector
                  || l.substance() == Substance.CAST_METAL
                      && !(c instanceof RetentionMesh
                          || c instanceof Clasp
                          || c instanceof TissueStop);
            })
        .toList();
  }

  static List<Mark> marks(List<Laid> parts) {
    List<Region> open = new ArrayList<>();
    List<Region> major = new ArrayList<>();
    List<Region> covers = new ArrayList<>();
    for (Laid l : parts) {
      if (l.component() instanceof Saddle) {
        covers.add(l.body());
      } else if (l.component() instanceof MajorConnector) {
        major.add(l.body());
      } else {
        open.add(l.body());
      }
    }
    Region cover = Region.union(covers);
    Region connector = Region.union(major);
    Region hidden = connector.intersection(cover);
    open.add(connector.minus(cover));
    Region metal = Region.union(open);
    if (metal.isEmpty() && hidden.isEmpty()) {
      return List.of();
    }
    List<Mark> out = new ArrayList<>();
    if (!hidden.isEmpty()) {
      List<Path> lines = new ArrayList<>();
      for (Outline o : connector.boundaries()) {
        lines.addAll(cover.inside(o.toPath()));
      }
      out.add(fill(hidden, 0.45));
      out.add(stroke(lines, 0.22, DASH));
    }
    if (!metal.isEmpty()) {
      Region cast = metal.simplified(0.012).filleted(FILLET).simplified(0.015);
      out.add(fill(cast, 1));
      out.add(stroke(Texture.hatch(cast, HATCH_DEGREES, HATCH_PITCH), HATCH_WIDTH, List.of()));
      out.add(
          stroke(
              cast.boundaries().stream().map(Outline::toPath).toList(), OUTLINE_WIDTH, List.of()));
    }
    return out;
  }

  private static Mark fill(Region r, double opacity) {
    return new Mark.Fill(Layer.FRAMEWORK, Ink.METAL, Optional.empty(), r.boundaries(), opacity);
  }

  private static Mark stroke(List<Path> lines, double width, List<Double> dash) {
    return new Mark.Stroke(
        Layer.FRAMEWORK, Ink.METAL_LINE, Optional.empty(), lines, false, width, dash);
  }
}
