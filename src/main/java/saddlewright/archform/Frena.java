package saddlewright.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** Folds of mucosa from lip, cheek and tongue: those of every mouth, and those charted. */
final class Frena {
  /** How far from the depth of the sulcus to the margin an ordinary frenum reaches. */
  private static final double ORDINARY = 0.45;

  /** The same for one that was charted because it is in the way. */
  private static final double CHARTED = 0.78;

  private Frena() {}

  /** The labial and buccal frena that every mouth has, where none was charted. */
  static List<Path> ordinary(ArchForm form) {
    List<Path> out = new ArrayList<>();
    boolean upper = form.arch() == Arch.UPPER;
    var charted = form.chart().softTissues().frena();
    Tooth centralRight = upper ? Tooth.T11 : Tooth.T41;
    if (!charted.contains(centralRight) && !charted.contains(centralRight.mirrored())) {
      double rim = midlineRim(form, Face.BUCCAL);
      Path sulcus = form.buccalSulcus();
      Point depth = new Point(0, sulcus.at(sulcus.length() / 2).y());
      fold(new Point(0, rim), depth, ORDINARY, out);
    }
    for (Tooth t : upper ? List.of(Tooth.T14, Tooth.T24) : List.of(Tooth.T44, Tooth.T34)) {
      if (!charted.contains(t)) {
        beside(form, t, ORDINARY * 0.8, out);
      }
    }
    return out;
  }

  static List<Path> charted(ArchForm form) {
    List<Path> out = new ArrayList<>();
    for (Tooth t : form.chart().softTissues().frena()) {
      beside(form, t, CHARTED, out);
    }
    return out;
  }

  /** The lingual frenum on the midline of a lower arch, from the floor of the mouth forwards. */
  static Optional<Path> lingual(ArchForm form) {
    if (form.arch() == Arch.UPPER) {
      return Optional.empty();
    }
    double rim = midlineRim(form, Face.LINGUAL);
    Path floor = form.lingualSulcus();
    double depth = floor.at(floor.length() / 2).y();
    double reach = form.chart().softTissues().highLingualFrenum() ? 0.75 : 0.25;
    return Optional.of(
        Path.of(new Point(0, depth + 2.5), new Point(0, depth + (rim - depth) * reach)));
  }

  private static double midlineRim(ArchForm form, Face face) {
    boolean upper = form.arch() == Arch.UPPER;
    PlacedTooth a = form.tooth(upper ? Tooth.T11 : Tooth.T41);
    PlacedTooth b = form.tooth(upper ? Tooth.T21 : Tooth.T31);
    return (a.rim(a.degreesAcross(face)).y() + b.rim(b.degreesAcross(face)).y()) / 2;
  }

  private static void beside(ArchForm form, Tooth tooth, double share, List<Path> out) {
    PlacedTooth t = form.tooth(tooth);
    Point rim = t.rim(t.degreesAcross(Face.BUCCAL));
    Point depth = form.buccalSulcus().nearest(rim);
    fold(rim, depth, share, out);
  }

  /**
   * A fold that starts broad in the sulcus and runs to a point a share of the way to the margin.
   */
  private static void fold(Point margin, Point depth, double share, List<Path> out) {
    Vector in = depth.to(margin);
    if (in.length() < 0.5) {
      return;
    }
    Point tip = depth.plus(in.times(share));
    Vector wide = in.unit().quarterTurn();
    for (double w : new double[] {-0.9, 0.9}) {
      Point foot = depth.plus(wide.times(w));
      out.add(Path.cubic(foot, foot.plus(in.times(share * 0.35)), tip.minus(in.times(0.1)), tip));
    }
  }
}
