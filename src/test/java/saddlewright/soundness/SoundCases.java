package saddlewright.soundness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;

/** The designs that are held to be sound: the demo cases that are no faults, and worked designs. */
final class SoundCases {
  static final Path WORKED = Path.of("src/test/resources/worked-designs");
  private static final Path DEMOS = Path.of("demo-cases");

  private SoundCases() {}

  /** By file name without its ending. */
  static Map<String, Assessment> all() throws Exception {
    Map<String, Assessment> out = new LinkedHashMap<>();
    for (Path p : demos()) {
      out.put(name(p), Assessment.of(CaseStore.load(p)));
    }
    for (Path p : worked()) {
      out.put(name(p), Assessment.of(CaseStore.load(p)));
    }
    return out;
  }

  static List<Path> demos() throws IOException {
    return in(DEMOS).stream().filter(p -> !name(p).contains("fault")).toList();
  }

  static List<Path> worked() throws IOException {
    return in(WORKED);
  }

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  static String name(Path file) {
    return file.getFileName().toString().replace(".json", "");
  }
}
