package saddlewright.bench;

import java.time.LocalDate;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.pdf.PrescriptionPdf;

/** What it costs to print a case that has been assessed, warm. */
@State(Scope.Benchmark)
public class PrescriptionBenchmark {
  private final Assessment assessed = Assessment.of(DemoCase.largest());

  @Benchmark
  public byte[] document() {
    return PrescriptionPdf.toBytes(assessed, LocalDate.of(2026, 11, 25));
  }

  @Benchmark
  public String schedule() {
    return Schedule.of(assessed, Notation.FDI).toText();
  }
}
