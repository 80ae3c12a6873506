package saddlewright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Times windows, each in a process of its own, with software rendering and no display. */
final class WindowBenchmark {
  private static final int STARTS = 5;

  private WindowBenchmark() {}

  static void run() throws IOException, InterruptedException {
    double empty = median("empty");
    double editor = median("editor");
    System.out.printf(Locale.ROOT, "%n%-64s %12.0f%n", "first frame of an empty window, ms", empty);
    System.out.printf(Locale.ROOT, "%-64s %12.0f%n", "first frame of the editor, ms", editor);
    System.out.printf(Locale.ROOT, "%-64s %12.2f%n", "ratio", editor / empty);
    String[] edit = probe("edit").split(" ");
    System.out.printf("%-64s %12s%n", "edit, derived and nodes updated, median ms", edit[0]);
    System.out.printf(
        "%-64s %12s%n", "edit, with a picture of the whole window, median ms", edit[1]);
    System.out.printf("%-64s %12s%n", "the same, 99th percentile ms", edit[2]);
  }

  private static double median(String what) throws IOException, InterruptedException {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < STARTS; i++) {
      all.add(Double.parseDouble(probe(what)));
    }
    Collections.sort(all);
    return all.get(STARTS / 2);
  }

  private static String probe(String what) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dprism.order=sw",
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dheadless.geometry=1920x1200-32",
                "-classpath",
                System.getProperty("java.class.path"),
                WindowProbe.class.getName(),
                what)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return out.strip();
  }
}
