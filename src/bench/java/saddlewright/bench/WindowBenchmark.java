package saddlewright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Measures windows, each in a process of its own, with software rendering and no display, and
 * prints one table of figures and aims. Run by itself it takes about two minutes.
 */
public final class WindowBenchmark {
  private static final int STARTS = 5;

  /** What the packaged program starts with: see the profile that packs it. */
  private static final String PACKED = "-XX:+UseSerialGC";

  private WindowBenchmark() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    run();
  }

  static void run() throws IOException, InterruptedException {
    System.out.printf(
        Locale.ROOT, "%n%-64s %12s %12s  %s%n", "the window", "measured", "aim", "met");
    starts();
    double[] edit = probe("edits");
    line("edit to painted pixels, median ms on the wall", edit[0], 16);
    line("the same, 99th percentile", edit[1], 33);
    line("edit to painted pixels, median ms of the processor", edit[2], 16);
    line("the same, 99th percentile", edit[3], 33);
    line("  of the median: derived and nodes updated", edit[4]);
    line("  of the median: styled, laid out and handed over", edit[5]);
    line("  of the median: painted", edit[6]);
    double[] frames = probe("frames");
    line("frames a second while panning", frames[0], -50);
    line("frames a second while zooming", frames[1], -50);
    line("frames that a second of the processor holds, panning", frames[2], -50);
    line("the same, zooming", frames[3], -50);
    double[] empty = probe("memory-empty");
    double[] editor = probe("memory-editor");
    line("resident memory of an empty window, MB", empty[1]);
    line("the editor's after 3600 edits, MB", editor[1]);
    line("ratio", editor[1] / empty[1], 1.5);
    line("live heap of an empty window, MB", empty[0]);
    line("the editor's after 3600 edits, MB", editor[0]);
  }

  /** In turn, so that whatever else runs on the machine slows all of them. */
  private static void starts() throws IOException, InterruptedException {
    String[] windows = {"empty", "themed", "editor"};
    double[][][] all = new double[windows.length][STARTS][];
    for (int i = 0; i < STARTS; i++) {
      for (int w = 0; w < windows.length; w++) {
        all[w][i] = probe(windows[w]);
      }
    }
    double[] wall = Arrays.stream(all).mapToDouble(w -> median(w, 0)).toArray();
    double[] processor = Arrays.stream(all).mapToDouble(w -> median(w, 1)).toArray();
    line("first frame of an empty window, ms", wall[0]);
    line("of one with a label, which loads the theme, ms", wall[1]);
    line("of the editor, ms", wall[2]);
    line("editor to empty window", wall[2] / wall[0], 1.3);
    line("editor to window with a label", wall[2] / wall[1]);
    line("editor to empty window, time of the processor", processor[2] / processor[0], 1.3);
  }

  private static double median(double[][] runs, int figure) {
    double[] all = Arrays.stream(runs).mapToDouble(r -> r[figure]).sorted().toArray();
    return all[all.length / 2];
  }

  private static void line(String what, double figure) {
    System.out.printf(Locale.ROOT, "%-64s %12.2f%n", what, figure);
  }

  /**
   * A figure with its aim.
   *
   * @param aim what it is to be at most; at least, where it is negative
   */
  private static void line(String what, double figure, double aim) {
    boolean met = aim < 0 ? figure >= -aim : figure <= aim;
    System.out.printf(
        Locale.ROOT,
        "%-64s %12.2f %12s  %s%n",
        what,
        figure,
        (aim < 0 ? "≥ " : "≤ ") + Math.abs(aim),
        met ? "yes" : "NO");
  }

  private static double[] probe(String what) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            PACKED,
            "-Djava.awt.headless=true",
            "-Dprism.order=sw",
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dheadless.geometry=1920x1200-32",
            "-classpath",
            System.getProperty("java.class.path"),
            WindowProbe.class.getName(),
            what));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    String[] figures =
        out.lines()
            .filter(l -> l.startsWith("measured "))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no figures from " + what + ": " + out))
            .split(" ");
    return Arrays.stream(figures).skip(1).mapToDouble(Double::parseDouble).toArray();
  }
}
