package saddlewright.bench;

import java.nio.file.Path;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ArchChart;
import saddlewright.design.ArchDesign;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** What the whole rule book costs on both arches of a case. */
public class RulesBenchmark {

  /** Layouts that have just been made: whatever rules measure lazily is measured again. */
  @State(Scope.Thread)
  public static class Fresh {
    @Param({"03-both-arches", "12-fault-both-arches"})
    public String name;

    private Case subject;
    private Situation bareUpper;
    private Situation bareLower;
    private Situation upper;
    private Situation lower;

    @Setup(Level.Trial)
    public void load() throws Exception {
      subject = CaseStore.load(Path.of("demo-cases", name + ".json"));
      bareUpper = bare(subject.upperChart(), subject.lowerChart());
      bareLower = bare(subject.lowerChart(), subject.upperChart());
    }

    private static Situation bare(ArchChart chart, ArchChart opposing) {
      return Situation.of(chart, opposing, ArchDesign.empty(chart.arch()), Profile.UK_TEACHING);
    }

    /** As after an edit of the design: the arch form is kept, everything else is laid anew. */
    @Setup(Level.Invocation)
    public void lay() {
      upper = laid(bareUpper, subject.upperDesign());
      lower = laid(bareLower, subject.lowerDesign());
    }

    private static Situation laid(Situation bare, ArchDesign design) {
      return bare.next(bare.chart(), bare.opposing(), design, bare.profile());
    }
  }

  @Benchmark
  public Object allRulesOnFreshLayouts(Fresh f) {
    return Report.of(List.of(f.upper, f.lower), List.of());
  }
}
