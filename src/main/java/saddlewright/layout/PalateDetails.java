package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.MinorConnector;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;

/** Lays out what is done to the fitting surface: dams, beading and relief. */
final class PalateDetails {
  /** Beading lies this far inside the border, mm. */
  private static final double INSIDE_BORDER = 1;

  /** Width of beading: 0.5–1 mm; one set of notes 1.5. */
  private static final double BEAD = 0.8;

  /** Half sizes of the relieved areas in mm (from memory of anatomy texts). */
  private static final double TORUS_HALF_WIDTH = 7;

  private static final double TORUS_HALF_LENGTH = 11;
  private static final double PAPILLA_HALF_WIDTH = 2.4;
  private static final double PAPILLA_HALF_LENGTH = 3.6;
  private static final double RAPHE_WIDTH = 3;

  /** Beading is left out over this width of the midline (common practice). */
  private static final double RAPHE_FADE = 4;

  private static final double MARGIN_BAND = 2.6;

  private final Ground ground;

  PalateDetails(Ground ground) {
    this.ground = ground;
  }

  Laid postDam(PostDam dam) {
    Laid laid = Laid.of(dam, Substance.NONE, Region.EMPTY);
    if (ground.connector().isEmpty() || ground.connector().get().body().isEmpty()) {
      return laid;
    }
    Laid connector = ground.connector().get();
    List<Path> lines = new ArrayList<>();
    Region inner = connector.body().grown(-INSIDE_BORDER);
    Region deeper = connector.body().grown(-INSIDE_BORDER - BEAD);
    if (dam.extent() == PostDam.Extent.ALL_BORDERS) {
      inner.boundaries().forEach(o -> lines.add(o.toPath()));
      deeper.boundaries().forEach(o -> lines.add(o.toPath()));
    } else if (connector.details().size() == 2) {
      Region rear = rearStrip(connector.details().get(1));
      for (Region r : List.of(inner, deeper)) {
        r.outlines().forEach(o -> lines.addAll(rear.inside(o.toPath())));
      }
    }
    Region spared = saddles();
    if (dam.extent() == PostDam.Extent.ALL_BORDERS) {
      // Beading fades out over the raphe.
      spared = spared.plus(Region.band(Path.of(new Point(0, 0), new Point(0, 90)), RAPHE_FADE));
    }
    List<Path> shown = new ArrayList<>();
    for (Path l : lines) {
      shown.addAll(spared.isEmpty() ? List.of(l) : spared.outside(l));
    }
    return laid.withDetails(shown.stream().filter(l -> l.length() > 1.5).toList());
  }

  private Region saddles() {
    return Region.union(ground.saddles().stream().map(Laid::body).toList());
  }

  private static Region rearStrip(Path border) {
    return Region.squareBand(border, 2 * (INSIDE_BORDER + BEAD) + 1.2);
  }

  Laid relief(Relief relief) {
    return Laid.of(relief, Substance.NONE, area(relief.area()))
        .with(Measure.HEIGHT, relief.thickness());
  }

  private Region area(Relief.Area area) {
    return switch (area) {
      case UNDER_LOWER_CONNECTOR ->
          ground.connector().map(c -> c.body().grown(-0.7).minus(saddles())).orElse(Region.EMPTY);
      case GINGIVAL_MARGINS -> crossings();
      default -> ground.form().arch() == Arch.UPPER ? palatal(area) : Region.EMPTY;
    };
  }

  private Region palatal(Relief.Area area) {
    double front = ground.ridge().at(middle(), ground.ridge().lingualMargin(middle())).y();
    double back = ground.form().palateLimit().box().minY();
    return switch (area) {
      case PALATAL_TORUS ->
          Outline.ellipse(
                  new Point(0, front + 0.6 * (back - front)),
                  TORUS_HALF_WIDTH,
                  TORUS_HALF_LENGTH,
                  0)
              .toRegion();
      case INCISIVE_PAPILLA ->
          Outline.ellipse(
                  new Point(0, front + PAPILLA_HALF_LENGTH + 0.5),
                  PAPILLA_HALF_WIDTH,
                  PAPILLA_HALF_LENGTH,
                  0)
              .toRegion();
      default ->
          Region.band(
              Path.of(new Point(0, front + 2 * PAPILLA_HALF_LENGTH + 2), new Point(0, back - 2)),
              RAPHE_WIDTH);
    };
  }

  private double middle() {
    Point right = ground.tooth(Tooth.T11).centre();
    return ground.ridge().arcOf(right.midpoint(ground.tooth(Tooth.T21).centre()));
  }

  /** Where the connector covers margins, and where minor connectors cross them. */
  private Region crossings() {
    List<Region> parts = new ArrayList<>();
    for (Path run : Necks.runs(ground, Face.LINGUAL)) {
      Region band = Region.band(run, MARGIN_BAND);
      ground.connector().ifPresent(c -> parts.add(band.intersection(c.body())));
    }
    for (MinorConnector m : ground.design().all(MinorConnector.class)) {
      Point p = Strut.crossing(ground, m.tooth(), m.place());
      parts.add(Outline.ellipse(p, 1.2, 1.2, 0).toRegion());
    }
    return Region.union(parts);
  }
}
