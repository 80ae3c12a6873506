package saddlewright.bench;

import java.nio.file.Path;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseStore;

/** The demo case with the most components, both arches designed. */
final class DemoCase {
  static final Path FILE = Path.of("demo-cases", "03-both-arches.json");

  private DemoCase() {}

  static Case largest() {
    try {
      return CaseStore.load(FILE);
    } catch (CaseFileException e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }
}
