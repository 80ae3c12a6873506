package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Region;
import saddlewright.layout.Laid;

/** Draws saddles and the metalwork inside them. */
final class SaddleDrawer {
  private static final double OUTLINE_WIDTH = 0.35;
  private static final double STIPPLE_PITCH = 1.35;
  private static final double DOT_RADIUS = 0.11;

  /** Width of a strut of a lattice seen from above, mm, and of the line on each side of it. */
  private static final double STRUT_WIDTH = 0.95;

  private static final double STRUT_LINE = 0.18;
  private static final double WIRE_WIDTH = 0.2;

  private final Laid laid;
  private final Optional<Subject> subject;

  SaddleDrawer(Laid laid, Optional<Subject> subject) {
    this.laid = laid;
    this.subject = subject;
  }

  List<Mark> saddle(Saddle saddle) {
    List<Mark> out = new ArrayList<>();
    Region body = laid.body();
    List<Outline> rings = body.boundaries();
    boolean metal = saddle.base() == Saddle.Base.METAL;
    Ink line = metal ? Ink.METAL_LINE : Ink.ACRYLIC_LINE;
    out.add(
        new Mark.Fill(
            Layer.SADDLES, metal ? Ink.METAL : Ink.ACRYLIC, subject, rings, metal ? 0.8 : 0.75));
    if (metal) {
      List<Path> lines = new ArrayList<>(Texture.hatch(body, 45, 1.6));
      lines.addAll(Texture.hatch(body, -45, 1.6));
      out.add(stroke(Layer.SADDLES, line, lines, 0.1, List.of()));
    } else {
      out.add(
          new Mark.Dots(
              Layer.SADDLES, line, subject, Texture.stipple(body, STIPPLE_PITCH), DOT_RADIUS));
    }
    out.add(
        stroke(
            Layer.SADDLES,
            line,
            rings.stream().map(Outline::toPath).toList(),
            OUTLINE_WIDTH,
            List.of()));
    return out;
  }

  List<Mark> mesh(RetentionMesh mesh) {
    List<Mark> out = new ArrayList<>();
    if (mesh.form() == RetentionMesh.Form.MESH) {
      out.add(stroke(Layer.FRAMEWORK, Ink.MESH, laid.details(), WIRE_WIDTH, List.of()));
      out.add(
          stroke(
              Layer.FRAMEWORK,
              Ink.MESH,
              laid.body().outlines().stream().map(Outline::toPath).toList(),
              2 * WIRE_WIDTH,
              List.of()));
    } else {
      // All outlines first, then all fills, so that struts open into each other where they cross.
      out.add(stroke(Layer.FRAMEWORK, Ink.MESH, laid.details(), STRUT_WIDTH, List.of()));
      out.add(
          stroke(
              Layer.FRAMEWORK, Ink.METAL, laid.details(), STRUT_WIDTH - 2 * STRUT_LINE, List.of()));
    }
    return out;
  }

  /** A tissue stop: the one solid foot of a mesh. */
  List<Mark> stop() {
    List<Path> rings = laid.body().outlines().stream().map(Outline::toPath).toList();
    return List.of(
        new Mark.Fill(Layer.FRAMEWORK, Ink.METAL, subject, laid.body().boundaries(), 1),
        stroke(
            Layer.FRAMEWORK, Ink.METAL_LINE, Texture.hatch(laid.body(), -45, 0.6), 0.11, List.of()),
        stroke(Layer.FRAMEWORK, Ink.METAL_LINE, rings, 0.28, List.of()));
  }

  /** The two lines of a finish line. */
  List<Mark> finishLine() {
    return List.of(stroke(Layer.FRAMEWORK, Ink.METAL_LINE, laid.details(), 0.2, List.of()));
  }

  private Mark stroke(Layer layer, Ink ink, List<Path> lines, double width, List<Double> dash) {
    return new Mark.Stroke(layer, ink, subject, lines, false, width, dash);
  }
}
