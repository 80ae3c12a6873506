package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * A saddle with what a technician needs to make it: mesh, finish line and, at the free end of a
 * lower one, a tissue stop.
 */
public final class CompleteSaddle {
  private CompleteSaddle() {}

  /**
   * The saddle over an edentulous run.
   *
   * @param freeEnds the replaced positions at ends with no tooth behind them; a lower saddle gets a
   *     tissue stop under each
   */
  public static Unit over(ArchDesign design, Span span, List<Tooth> freeEnds) {
    Unit unit = Unit.in(design);
    if (design.saddlesIn(span).isEmpty()) {
      unit.plus(Saddle.of(Unit.id("saddle"), span));
    }
    unit.plus(new RetentionMesh(Unit.id("mesh"), span, RetentionMesh.Form.LATTICE));
    unit.plus(new FinishLine(Unit.id("finish"), span, FinishLine.Level.BOTH));
    if (span.arch() == Arch.LOWER) {
      freeEnds.forEach(t -> unit.plus(new TissueStop(Unit.id("stop"), t)));
    }
    return unit;
  }
}
