package saddlewright.bench;

import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.SheetDrawing;
import saddlewright.layout.Layout;

/** What one edit costs before anything is painted: everything is derived again for both arches. */
@State(Scope.Benchmark)
public class RecomputeBenchmark {
  private final Case subject = DemoCase.largest();
  private final Assessment assessed = Assessment.of(subject);

  @Benchmark
  public Object everything() {
    Assessment a = Assessment.of(subject);
    return SheetDrawing.of(
        Optional.of(a.upper().layout()), Optional.of(a.lower().layout()), DrawingOptions.DEFAULT);
  }

  @Benchmark
  public Object archFormOfOneArch() {
    return ArchForm.of(subject.lowerChart());
  }

  @Benchmark
  public Object layoutOfOneArch() {
    return Layout.of(assessed.lower().form(), subject.lowerDesign());
  }

  @Benchmark
  public Object drawing() {
    return SheetDrawing.of(
        Optional.of(assessed.upper().layout()),
        Optional.of(assessed.lower().layout()),
        DrawingOptions.DEFAULT);
  }
}
