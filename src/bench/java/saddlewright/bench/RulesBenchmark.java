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
    private Situation upper;
    private Situation lower;

    @Setup(Level.Trial)
    public void load() throws Exception {
      subject = CaseStore.load(Path.of("demo-cases", name + ".json"));
    }

    @Setup(Level.Invocation)
    public void lay() {
      Profile p = Profile.UK_TEACHING;
      upper = Situation.of(subject.upperChart(), subject.lowerChart(), subject.upperDesign(), p);
      lower = Situation.of(subject.lowerChart(), subject.upperChart(), subject.lowerDesign(), p);
    }
  }

  @Benchmark
  public Object allRulesOnFreshLayouts(Fresh f) {
    return Report.of(List.of(f.upper, f.lower), List.of());
  }
}
