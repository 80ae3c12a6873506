package saddlewright.layout;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;

/** Charts and simple designs to lay out. */
final class Mouths {
  private Mouths() {}

  /** A chart with the teeth missing and to be replaced. */
  static ArchChart missing(Arch arch, Integer... fdi) {
    ArchChart chart = ArchChart.full(arch);
    for (int n : fdi) {
      chart = chart.with(Tooth.of(n), lost(GapDecision.REPLACED));
    }
    return chart;
  }

  static ToothFindings lost(GapDecision gap) {
    return ToothFindings.of(ToothStatus.MISSING, gap);
  }

  /** Any pattern of loss, from none to all, most of it to be replaced. */
  static Arbitrary<ArchChart> any(Arch arch) {
    return Arbitraries.randomValue(
        random -> {
          double share = random.nextDouble() * 1.1;
          ArchChart chart = ArchChart.full(arch);
          for (Tooth t : Tooth.in(arch)) {
            if (random.nextDouble() < share) {
              chart = chart.with(t, lost(decision(random)));
            }
          }
          return chart;
        });
  }

  private static GapDecision decision(Random random) {
    int n = random.nextInt(12);
    return n == 0 ? GapDecision.NOT_REPLACED : n == 1 ? GapDecision.CLOSED : GapDecision.REPLACED;
  }

  /** A saddle with a lattice and a finish line for every run of places to be replaced. */
  static ArchDesign saddles(ArchChart chart) {
    ArchDesign design = ArchDesign.empty(chart.arch());
    List<Tooth> row = Tooth.in(chart.arch());
    int start = -1;
    for (int i = 0; i <= 16; i++) {
      boolean replaced = i < 16 && chart.isReplaced(row.get(i));
      if (replaced && start < 0) {
        start = i;
      } else if (!replaced && start >= 0) {
        Span span = Span.of(row.get(start), row.get(i - 1));
        design =
            design
                .plus(Saddle.of(design.freshId("saddle"), span))
                .plus(new RetentionMesh(design.freshId("mesh"), span, RetentionMesh.Form.LATTICE))
                .plus(new FinishLine(design.freshId("finish"), span, FinishLine.Level.BOTH));
        start = -1;
      }
    }
    return design;
  }

  /** The saddles and a connector of the form with its usual span. */
  static ArchDesign designed(ArchChart chart, ConnectorForm form) {
    ArchDesign design = saddles(chart);
    return design.plus(ConnectorChoice.of(ComponentId.of("major"), form, chart, design));
  }

  static Layout laid(ArchChart chart, ArchDesign design) {
    return Layout.of(ArchForm.of(chart), design);
  }

  static ArchChart mirrored(ArchChart chart) {
    ArchChart out = ArchChart.full(chart.arch());
    for (Tooth t : Tooth.in(chart.arch())) {
      out = out.with(t.mirrored(), chart.tooth(t));
    }
    return out;
  }
}
