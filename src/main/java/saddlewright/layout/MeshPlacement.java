package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.design.RetentionMesh;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.layout.SaddleReach.Stop;

/**
 * Lays out the open metalwork of saddles along the ridge crest.
 *
 * <p>The body is the strip that it takes up; the details are its strands.
 */
final class MeshPlacement {
  /** A lower free-end mesh covers this share of the ridge; an upper one reaches the tuberosity. */
  static final double LOWER_FREE_END_SHARE = 2.0 / 3;

  /** Distance of the metalwork from the abutment, mm. */
  private static final double OFF_ABUTMENT = 0.6;

  /** Distance of cross struts, mm, so that acrylic can flow between them (common practice). */
  private static final double CROSS_STEP = 4.5;

  /** Distance of the wires of a fine mesh, mm. */
  private static final double FINE_STEP = 1.25;

  /** Wires along the ridge in a fine mesh, less one. */
  private static final int GRID_LINES = 5;

  /** Longest strut that ties the mesh to a connector which passes by, mm. */
  private static final double LONGEST_TIE = 9;

  private final Ground ground;
  private final RidgeFrame ridge;

  MeshPlacement(Ground ground) {
    this.ground = ground;
    this.ridge = ground.ridge();
  }

  Laid lay(RetentionMesh mesh) {
    double[] run = run(SaddleReach.of(ground, mesh.span()));
    double from = run[0];
    double to = run[1];
    Path lingual = along(0.6, from, to);
    Path buccal = along(-0.52, from, to);
    List<Path> strands =
        switch (mesh.form()) {
          case LATTICE -> lattice(lingual, buccal, from, to);
          case MESH -> grid(lingual, buccal, from, to);
          case POSTS -> posts(mesh, from, to);
        };
    List<Path> all = new ArrayList<>(strands);
    List<Point> ring = new ArrayList<>(lingual.points());
    List<Point> back = new ArrayList<>(buccal.points());
    Collections.reverse(back);
    ring.addAll(back);
    Region strip = Outline.of(ring).toRegion();
    if (ground.connector().stream().noneMatch(c -> c.body().intersects(strip))) {
      all.addAll(ties(from, to));
    }
    return Laid.of(mesh, Substance.CAST_METAL, strip)
        .withDetails(all)
        .with(Measure.LENGTH, to - from);
  }

  private double[] run(SaddleReach reach) {
    double from = reach.from() + (reach.first() == Stop.ABUTMENT ? OFF_ABUTMENT : 1.5);
    double to = reach.to() - (reach.last() == Stop.ABUTMENT ? OFF_ABUTMENT : 1.5);
    if (ground.form().arch() == Arch.LOWER) {
      double length = (to - from) * LOWER_FREE_END_SHARE;
      if (reach.first() == Stop.PAD && reach.last() != Stop.PAD) {
        from = to - length;
      } else if (reach.last() == Stop.PAD && reach.first() != Stop.PAD) {
        to = from + length;
      } else if (reach.last() == Stop.PAD) {
        double spare = (to - from - length) / 2;
        from += spare;
        to -= spare;
      }
    } else {
      from += reach.first() == Stop.PAD ? 3 : 0;
      to -= reach.last() == Stop.PAD ? 3 : 0;
    }
    return new double[] {from, Math.max(to, from + 1)};
  }

  /** The line at a share of the way from the crest to the lingual (or, negative, buccal) border. */
  private Path along(double share, double from, double to) {
    double[] across = new double[ridge.size()];
    for (int i = 0; i < across.length; i++) {
      double arc = ridge.arc(i);
      across[i] =
          share * Math.max(2.5, share > 0 ? ridge.lingualMargin(arc) : ridge.buccalMargin(arc));
    }
    return ridge.curve(Fairing.mean(Fairing.mean(across, 5), 4), from, to);
  }

  private static List<Path> lattice(Path lingual, Path buccal, double from, double to) {
    List<Path> out = new ArrayList<>();
    out.add(lingual);
    out.add(buccal);
    int n = Math.max(1, (int) Math.round((to - from) / CROSS_STEP));
    for (int i = 0; i <= n; i++) {
      out.add(rung(lingual, buccal, (double) i / n));
    }
    return out;
  }

  private static Path rung(Path lingual, Path buccal, double share) {
    return Path.of(lingual.at(share * lingual.length()), buccal.at(share * buccal.length()));
  }

  private List<Path> grid(Path lingual, Path buccal, double from, double to) {
    List<Path> out = new ArrayList<>();
    int steps = Math.max(4, (int) Math.ceil((to - from) / 1.5));
    for (int k = 0; k <= GRID_LINES; k++) {
      List<Point> line = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        double share = (double) i / steps;
        Point a = lingual.at(share * lingual.length());
        line.add(a.towards(buccal.at(share * buccal.length()), (double) k / GRID_LINES));
      }
      out.add(Path.through(line));
    }
    int n = Math.max(2, (int) Math.round((to - from) / FINE_STEP));
    for (int i = 0; i <= n; i++) {
      out.add(rung(lingual, buccal, (double) i / n));
    }
    return out;
  }

  /** A spine along the crest with a small ring under each artificial tooth. */
  private List<Path> posts(RetentionMesh mesh, double from, double to) {
    List<Path> out = new ArrayList<>();
    out.add(along(0.01, from, to));
    mesh.span().teeth().stream()
        .map(ground::tooth)
        .filter(t -> !t.isClosed())
        .map(PlacedTooth::centre)
        .filter(c -> ridge.arcOf(c) >= from && ridge.arcOf(c) <= to)
        .forEach(c -> out.add(Outline.ellipse(c, 0.9, 0.9, 0).toPath()));
    return out;
  }

  /** Struts to a connector that passes the saddle without running into it. */
  private List<Path> ties(double from, double to) {
    List<Path> out = new ArrayList<>();
    if (ground.connector().isEmpty() || ground.connector().get().body().isEmpty()) {
      return out;
    }
    Region metal = ground.connector().get().body();
    int n = to - from > 12 ? 2 : 1;
    for (int i = 0; i < n; i++) {
      double arc = from + (to - from) * (n == 1 ? 0.5 : 0.3 + 0.4 * i);
      Point inner = ridge.at(arc, 0.6 * ridge.lingualMargin(arc));
      Point outer = ridge.at(arc, -0.52 * ridge.buccalMargin(arc));
      Point edge = metal.distanceTo(inner) <= metal.distanceTo(outer) ? inner : outer;
      double gap = metal.distanceTo(edge);
      if (gap > 0.3 && gap < LONGEST_TIE) {
        Point near = metal.nearest(edge);
        out.add(Path.of(edge, edge.towards(near, (gap + 0.8) / gap)));
      }
    }
    return out;
  }
}
