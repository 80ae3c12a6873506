package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.CrownDetail;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.End;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * Draws the place of a tooth that does not stand: an artificial tooth hatched, a place left empty
 * as a faint outline, a closed one as a tick; with the root, implant or germ that is there.
 */
final class LostPlaceDrawer {
  private static final double HATCH_DEGREES = 60;
  private static final double HATCH_PITCH = 1.0;
  private static final List<Double> DASH = List.of(0.9, 0.7);
  private static final double IMPLANT_RADIUS = 1.9;

  private final PlacedTooth tooth;
  private final ArchChart chart;
  private final Optional<Subject> subject;

  LostPlaceDrawer(PlacedTooth tooth, ArchChart chart) {
    this.tooth = tooth;
    this.chart = chart;
    this.subject = Optional.of(Subject.of(tooth.tooth()));
  }

  List<Mark> marks() {
    if (tooth.isClosed()) {
      // One tick is enough where several places in a row have closed.
      boolean again = tooth.tooth().neighbour(End.MESIAL).filter(chart::isClosed).isPresent();
      return again ? List.of() : closed();
    }
    List<Mark> out = new ArrayList<>();
    ToothStatus status = chart.tooth(tooth.tooth()).status();
    out.addAll(chart.isReplaced(tooth.tooth()) ? artificial() : empty());
    if (status == ToothStatus.RETAINED_ROOT) {
      out.addAll(root());
    } else if (status == ToothStatus.IMPLANT) {
      out.addAll(implant());
    } else if (status == ToothStatus.UNERUPTED) {
      out.add(
          new Mark.Label(
              Layer.TEETH,
              Ink.ANATOMY,
              subject,
              "U",
              tooth.centre(),
              2.6,
              Mark.Align.MIDDLE,
              false));
    }
    return out;
  }

  /** An artificial tooth: it reads as a tooth on its saddle, and as one that is missing. */
  private List<Mark> artificial() {
    double degrees = tooth.tooth().side() == Side.RIGHT ? HATCH_DEGREES : 180 - HATCH_DEGREES;
    List<Path> lines =
        tooth.details().stream()
            .filter(
                d ->
                    d.kind() == CrownDetail.Kind.GROOVE
                        || d.kind() == CrownDetail.Kind.EDGE
                        || d.kind() == CrownDetail.Kind.FOSSA)
            .map(CrownDetail::path)
            .toList();
    return List.of(
        new Mark.Fill(Layer.TEETH, Ink.ENAMEL, subject, List.of(tooth.outline()), 0.72),
        stroke(Ink.FAINT, 0.1, Texture.hatch(tooth.region(), degrees, HATCH_PITCH), List.of()),
        stroke(Ink.FAINT, 0.14, lines, List.of()),
        stroke(Ink.FAINT, 0.27, List.of(tooth.outline().toPath()), List.of()));
  }

  private List<Mark> empty() {
    return List.of(stroke(Ink.FAINT, 0.18, List.of(tooth.outline().toPath()), DASH));
  }

  /** Two small ticks that lean together where neighbours have closed the space. */
  private List<Mark> closed() {
    Point at = tooth.centre().plus(tooth.outward().times(tooth.halfDepth() + 0.8));
    Vector along = tooth.mesial();
    List<Path> ticks = new ArrayList<>();
    for (int s = -1; s <= 1; s += 2) {
      Point tip = at.plus(along.times(0.3 * s));
      Vector back = along.times(0.7 * s);
      Vector up = tooth.outward().times(0.65);
      ticks.add(Path.of(tip.plus(back).plus(up), tip, tip.plus(back).minus(up)));
    }
    return List.of(new Mark.Stroke(Layer.LABELS, Ink.FAINT, subject, ticks, false, 0.2, List.of()));
  }

  /** Root faces with their canals, one for each root. */
  private List<Mark> root() {
    List<Mark> out = new ArrayList<>();
    CrownSize size = CrownSize.mean(tooth.tooth());
    double[][] places = rootPlaces(tooth.tooth());
    List<Point> canals = new ArrayList<>();
    List<Path> faces = new ArrayList<>();
    for (double[] p : places) {
      Point at = tooth.at(p[0], p[1]);
      double halfM = size.cervicalWidth() / 2 * p[2];
      double halfB = size.cervicalDepth() / 2 * p[3];
      Outline face = Outline.ellipse(at, halfM, halfB, tooth.mesial().angle());
      out.add(new Mark.Fill(Layer.TEETH, Ink.ENAMEL_SHADE, subject, List.of(face), 1));
      faces.add(face.toPath());
      canals.add(at);
    }
    out.add(stroke(Ink.TOOTH_LINE, 0.25, faces, List.of()));
    out.add(new Mark.Dots(Layer.TEETH, Ink.TOOTH_LINE, subject, canals, 0.35));
    return out;
  }

  /** Place (shares of half width and depth) and size (shares of the cervix) of each root face. */
  private static double[][] rootPlaces(Tooth t) {
    if (!t.isMolar()) {
      return new double[][] {{0, 0, 0.9, 0.9}};
    }
    return t.arch() == Arch.UPPER
        ? new double[][] {{0.4, 0.42, 0.42, 0.4}, {-0.42, 0.42, 0.4, 0.36}, {0, -0.45, 0.55, 0.38}}
        : new double[][] {{0.42, 0, 0.4, 0.78}, {-0.42, 0, 0.4, 0.7}};
  }

  /** An implant: the hexagon of its head in a circle. */
  List<Mark> implant() {
    Point c = tooth.centre();
    Outline ring = Outline.ellipse(c, IMPLANT_RADIUS, IMPLANT_RADIUS, 0);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      corners.add(c.plus(tooth.direction(60 * i).unit().times(0.62 * IMPLANT_RADIUS)));
    }
    Outline hexagon = Outline.of(corners);
    return List.of(
        new Mark.Fill(Layer.TEETH, Ink.PAPER, subject, List.of(ring), 1),
        stroke(Ink.TOOTH_LINE, 0.25, List.of(ring.toPath(), hexagon.toPath()), List.of()));
  }

  private Mark stroke(Ink ink, double width, List<Path> paths, List<Double> dash) {
    return new Mark.Stroke(Layer.TEETH, ink, subject, paths, false, width, dash);
  }
}
