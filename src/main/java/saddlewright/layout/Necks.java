package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** Gingival margins of standing teeth, run by run, as points close enough to measure from. */
final class Necks {
  private static final double STEP = 0.5;

  private Necks() {}

  /** The margin pieces along one face, one for each run of standing neighbours, right to left. */
  static List<Path> runs(Ground ground, Face face) {
    Path margin =
        face == Face.LINGUAL ? ground.form().lingualMargin() : ground.form().buccalMargin();
    List<Path> out = new ArrayList<>();
    Tooth first = null;
    Tooth last = null;
    for (PlacedTooth t : ground.form().teeth()) {
      if (ground.chart().stands(t.tooth())) {
        first = first == null ? t.tooth() : first;
        last = t.tooth();
      } else if (first != null && !t.isClosed()) {
        out.add(piece(ground, margin, first, last, face));
        first = null;
      }
    }
    if (first != null) {
      out.add(piece(ground, margin, first, last, face));
    }
    return out;
  }

  /** Points of those pieces, at most 0.5 mm apart. */
  static List<Point> points(Ground ground, Face face) {
    List<Point> out = new ArrayList<>();
    runs(ground, face).forEach(p -> out.addAll(p.sampled(STEP)));
    return out;
  }

  private static Path piece(Ground ground, Path margin, Tooth first, Tooth last, Face face) {
    double from = margin.arcNearest(corner(ground, first, Side.RIGHT, face));
    double to = margin.arcNearest(corner(ground, last, Side.LEFT, face));
    return margin.between(Math.min(from, to), Math.max(from, to));
  }

  /** The line angle of a crown at the side of the mouth and face named. */
  private static Point corner(Ground ground, Tooth tooth, Side towards, Face face) {
    End end = (tooth.side() == towards) ? End.DISTAL : End.MESIAL;
    double lean = face == Face.LINGUAL ? -25 : 25;
    PlacedTooth t = ground.tooth(tooth);
    return t.rim(end == End.MESIAL ? lean : 180 - lean);
  }
}
