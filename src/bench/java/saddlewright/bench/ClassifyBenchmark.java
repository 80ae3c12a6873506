package saddlewright.bench;

import java.util.Set;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.classification.ArchPattern;
import saddlewright.classification.Classification;
import saddlewright.classification.KennedyVerdict;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** The Kennedy class of one arch, with its reasoning and without. */
@State(Scope.Benchmark)
public class ClassifyBenchmark {

  /** The lost teeth. */
  @Param({"36,37,38,46,47,48", "36,37,44,42,32"})
  public String lost;

  private ArchChart chart;

  @Setup
  public void chart() {
    chart = ArchChart.full(Arch.LOWER);
    for (String tooth : lost.split(",")) {
      chart =
          chart.with(
              Tooth.of(Integer.parseInt(tooth)),
              ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
  }

  @Benchmark
  public Classification withReasoning() {
    return Classification.of(chart, Set.of());
  }

  @Benchmark
  public KennedyVerdict classOnly() {
    return ArchPattern.of(chart, Set.of()).verdict();
  }
}
