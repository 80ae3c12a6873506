package saddlewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.design.Backing;
import saddlewright.design.FinishLine;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;
import saddlewright.layout.SaddleReach.Stop;

/** Lays out the small metalwork of saddles: finish lines, tissue stops and backings. */
final class SaddleFittings {
  /** Distance between the two lines by which a step of the metal is drawn, mm. */
  private static final double DOUBLE_LINE = 0.55;

  /** A lower finish line runs this far beyond the necks of the artificial teeth, mm. */
  private static final double LOWER_BEYOND_NECK = 1.6;

  /** Side of a tissue stop, mm (common practice: 2–3). */
  private static final double STOP_SIDE = 2.6;

  /** Thickness of a backing seen from above, mm (from memory). */
  private static final double BACKING = 1;

  private final Ground ground;

  SaddleFittings(Ground ground) {
    this.ground = ground;
  }

  Laid finishLine(FinishLine line) {
    RidgeFrame ridge = ground.ridge();
    SaddleReach reach = SaddleReach.of(ground, line.span());
    double from = reach.from() + (reach.first() == Stop.ABUTMENT ? 0.8 : 4);
    double to = Math.max(reach.to() - (reach.last() == Stop.ABUTMENT ? 0.8 : 4), from + 1);
    Optional<Saddle> saddle =
        line.span().teeth().stream().flatMap(t -> ground.design().saddleAt(t).stream()).findFirst();
    double[] across = new double[ridge.size()];
    for (int i = 0; i < across.length; i++) {
      double arc = ridge.arc(i);
      across[i] =
          ground.form().arch() == Arch.LOWER || saddle.isEmpty()
              ? ridge.lingualMargin(arc) + LOWER_BEYOND_NECK
              : SaddlePlacement.lingualBorder(ground, saddle.get(), arc) - 0.7;
    }
    across = Fairing.mean(Fairing.mean(across, 4), 3);
    Path outer = ridge.curve(across, from, to);
    double[] second = across.clone();
    for (int i = 0; i < second.length; i++) {
      second[i] -= DOUBLE_LINE;
    }
    Path inner = ridge.curve(second, from, to);
    return Laid.of(line, Substance.NONE, Region.EMPTY)
        .withCentreline(outer)
        .withDetails(clipped(List.of(outer, inner)))
        .with(Measure.LENGTH, outer.length());
  }

  /** The lines as far as they lie in saddles; all of them when no saddle is there. */
  private List<Path> clipped(List<Path> lines) {
    List<Path> out = new ArrayList<>();
    for (Laid saddle : ground.saddles()) {
      lines.forEach(l -> out.addAll(saddle.body().inside(l)));
    }
    return out.isEmpty() ? lines : out;
  }

  Laid tissueStop(TissueStop stop) {
    PlacedTooth t = ground.tooth(stop.tooth());
    Vector m = t.mesial().times(STOP_SIDE / 2);
    Vector b = t.buccal().times(STOP_SIDE / 2);
    Point c = t.centre();
    Outline square =
        Outline.of(
            List.of(
                c.plus(m).plus(b), c.minus(m).plus(b), c.minus(m).minus(b), c.plus(m).minus(b)));
    return Laid.of(stop, Substance.CAST_METAL, square.toRegion().rounded(0.3))
        .with(Measure.WIDTH, STOP_SIDE);
  }

  Laid backing(Backing backing) {
    PlacedTooth t = ground.tooth(backing.tooth());
    Path inside = t.rim(205, 335, -BACKING / 2);
    return Laid.of(backing, Substance.CAST_METAL, inside.ribbon(BACKING, BACKING).toRegion())
        .with(Measure.LENGTH, inside.length());
  }
}
