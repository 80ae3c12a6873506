package saddlewright.design.transfer;

import java.util.List;
import java.util.function.Predicate;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.design.Backing;
import saddlewright.design.Component;
import saddlewright.design.FinishLine;
import saddlewright.design.MajorConnector;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;

/** Whether a mouth has what a component stands on: teeth under a clasp, none under a saddle. */
public final class Bearing {
  private Bearing() {}

  /** The places where the mouth is not as the component asks; none when it bears it. */
  public static List<Tooth> faults(ArchChart chart, Component c) {
    if (c instanceof MajorConnector) {
      // It spans teeth and gaps alike.
      return List.of();
    }
    Predicate<Tooth> bears = isOverRidge(c) ? chart::isLost : chart::stands;
    return c.teeth().stream().filter(bears.negate()).toList();
  }

  /** Whether it lies where teeth are lost. */
  public static boolean isOverRidge(Component c) {
    return c instanceof Saddle
        || c instanceof RetentionMesh
        || c instanceof FinishLine
        || c instanceof TissueStop
        || c instanceof Backing;
  }
}
