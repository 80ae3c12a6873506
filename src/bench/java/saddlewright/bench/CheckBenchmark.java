package saddlewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import saddlewright.Main;

/** Times the check of a thousand case files, in a process of its own, start of the JVM included. */
final class CheckBenchmark {
  private static final int FILES = 1000;
  private static final int RUNS = 3;

  private CheckBenchmark() {}

  static void run() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("check");
    try {
      List<String> files = copies(folder);
      List<Double> seconds = new ArrayList<>();
      for (int i = 0; i < RUNS; i++) {
        seconds.add(seconds(files, folder.resolve("report.txt")));
      }
      Collections.sort(seconds);
      System.out.printf(
          Locale.ROOT, "%n%-64s %12.2f%n", "check of 1,000 case files, median s", seconds.get(1));
    } finally {
      delete(folder);
    }
  }

  private static List<String> copies(Path folder) throws IOException {
    List<Path> demos;
    try (Stream<Path> found = Files.list(Path.of("demo-cases"))) {
      demos = found.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
    List<String> out = new ArrayList<>();
    for (int i = 0; i < FILES; i++) {
      Path copy = folder.resolve(String.format(Locale.ROOT, "%04d.json", i));
      Files.copy(demos.get(i % demos.size()), copy);
      out.add(copy.toString());
    }
    return out;
  }

  private static double seconds(List<String> files, Path report)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-classpath");
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.add("check");
    command.addAll(files);
    long start = System.nanoTime();
    new ProcessBuilder(command)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .redirectOutput(report.toFile())
        .start()
        .waitFor();
    return (System.nanoTime() - start) / 1e9;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> found = Files.walk(folder)) {
      for (Path p : found.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
