package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.CrownDetail;
import saddlewright.archform.PlacedTooth;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Draws a crown seen from above so that its faces can be told apart without its number. */
final class CrownDrawer {
  private static final double OUTLINE_WIDTH = 0.25;
  private static final double CROSS_WIDTH = 0.5;

  /** Shades that deepen towards the lingual slope: size of the lit part, and its way buccally. */
  private static final double[][] SHADES = {{0.94, 0.035, 0.6}, {0.87, 0.075, 0.55}};

  private final PlacedTooth tooth;
  private final Optional<Subject> subject;

  CrownDrawer(PlacedTooth tooth) {
    this.tooth = tooth;
    this.subject = Optional.of(Subject.of(tooth.tooth()));
  }

  /** A natural crown. */
  List<Mark> natural() {
    List<Mark> out = new ArrayList<>();
    out.add(new Mark.Fill(Layer.TEETH, Ink.ENAMEL, subject, List.of(tooth.outline()), 1));
    for (double[] s : SHADES) {
      out.add(
          new Mark.Fill(
              Layer.TEETH,
              Ink.ENAMEL_SHADE,
              subject,
              List.of(tooth.outline(), lit(s[0], s[1])),
              s[2]));
    }
    out.addAll(details());
    out.add(stroke(Ink.TOOTH_LINE, OUTLINE_WIDTH, List.of(tooth.outline().toPath())));
    return out;
  }

  /** Fissures, ridges and edges, in their inks. */
  private List<Mark> details() {
    List<Mark> out = new ArrayList<>();
    out.add(stroke(Ink.FISSURE, 0.09, of(CrownDetail.Kind.RIDGE)));
    out.add(stroke(Ink.FISSURE, 0.09, of(CrownDetail.Kind.LOBE)));
    out.add(stroke(Ink.FISSURE, 0.11, of(CrownDetail.Kind.TABLE)));
    out.add(stroke(Ink.FISSURE, 0.14, of(CrownDetail.Kind.FOSSA)));
    out.add(stroke(Ink.FISSURE, 0.19, of(CrownDetail.Kind.GROOVE)));
    out.add(stroke(Ink.TOOTH_LINE, 0.15, of(CrownDetail.Kind.EDGE)));
    out.removeIf(m -> m instanceof Mark.Stroke s && s.paths().isEmpty());
    return out;
  }

  /** The cross over a tooth that is to be extracted. */
  Mark cross() {
    List<Path> lines =
        List.of(
            Path.of(tooth.at(-0.8, -0.8), tooth.at(0.8, 0.8)),
            Path.of(tooth.at(-0.8, 0.8), tooth.at(0.8, -0.8)));
    return new Mark.Stroke(
        Layer.TEETH, Ink.EXTRACTION, subject, lines, false, CROSS_WIDTH, List.of());
  }

  private List<Path> of(CrownDetail.Kind kind) {
    return tooth.details().stream().filter(d -> d.kind() == kind).map(CrownDetail::path).toList();
  }

  private Outline lit(double size, double buccally) {
    Point c = tooth.centre().plus(tooth.buccal().times(buccally * tooth.halfDepth()));
    return Outline.of(
        tooth.outline().points().stream()
            .map(p -> c.plus(tooth.centre().to(p).times(size)))
            .toList());
  }

  private Mark stroke(Ink ink, double width, List<Path> paths) {
    return new Mark.Stroke(Layer.TEETH, ink, subject, paths, false, width, List.of());
  }
}
