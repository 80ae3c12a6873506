package saddlewright.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Measures every {@code @Benchmark} of this package, briefly, and prints one table. */
public final class Benchmarks {

  private Benchmarks() {}

  /**
   * Runs the benchmarks.
   *
   * @param args at most one: a regular expression that the names must contain
   */
  public static void main(String[] args) throws Exception {
    if (Benchmarks.class.getResource("/META-INF/BenchmarkList") == null) {
      System.out.println("There are no benchmarks yet.");
      return;
    }
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(args.length > 0 ? args[0] : "saddlewright\\.bench\\.")
                    .mode(Mode.AverageTime)
                    .timeUnit(TimeUnit.MILLISECONDS)
                    .forks(1)
                    .warmupIterations(3)
                    .warmupTime(TimeValue.seconds(1))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.seconds(1))
                    .shouldFailOnError(true)
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run();
    System.out.printf(Locale.ROOT, "%n%-64s %12s %12s%n", "benchmark", "ms each", "± 99.9 %");
    for (RunResult run : results) {
      Result<?> result = run.getPrimaryResult();
      System.out.printf(
          Locale.ROOT,
          "%-64s %12.4f %12.4f%n",
          name(run),
          result.getScore(),
          result.getScoreError());
    }
    if (args.length == 0) {
      CheckBenchmark.run();
      WindowBenchmark.run();
    }
  }

  private static String name(RunResult run) {
    StringBuilder name =
        new StringBuilder(
            run.getParams()
                .getBenchmark()
                .substring(Benchmarks.class.getPackageName().length() + 1));
    for (String key : run.getParams().getParamsKeys()) {
      name.append(' ').append(key).append('=').append(run.getParams().getParam(key));
    }
    return name.toString();
  }
}
