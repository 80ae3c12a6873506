package saddlewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseStore;

/** Loading a case and saving it again, forced to the disk. */
@State(Scope.Benchmark)
public class CaseFileBenchmark {
  private Path copy;

  @Setup
  public void copy() throws IOException {
    copy = Files.createTempFile("case", ".json");
    Files.copy(DemoCase.FILE, copy, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
  }

  @TearDown
  public void clear() throws IOException {
    Files.deleteIfExists(copy);
  }

  @Benchmark
  public Case load() throws CaseFileException {
    return CaseStore.load(copy);
  }

  @Benchmark
  public void loadAndSave() throws CaseFileException {
    CaseStore.save(CaseStore.load(copy), copy);
  }
}
