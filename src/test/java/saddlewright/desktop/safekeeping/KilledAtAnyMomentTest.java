package saddlewright.desktop.safekeeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;

/**
 * The program is killed 200 times at random moments, while it edits and saves: no edit older than a
 * second is lost, and neither the user's file nor the recovery copy is ever found broken.
 */
class KilledAtAnyMomentTest {
  private static final int KILLS = 200;

  /** More than there are processors, since a program that edits waits most of the time. */
  private static final int AT_ONCE = 4;

  /** One in so many is a whole desk; the others are what keeps and saves, which starts sooner. */
  private static final int DESKS = 8;

  private static final long MOST_LOST_MS = 1000;
  private static final Path CASE = Path.of("demo-cases/02-lower-class-2-tilted-molar.json");
  private static final List<String> FLAGS =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx96m");

  /** What the program said of itself: what it did, when, and the title that the case then had. */
  private record Said(boolean saved, long at, String title) {
    static Said of(String line) {
      String[] parts = line.split(" ", 3);
      return new Said(parts[0].equals(EditingToBeKilled.SAVED), Long.parseLong(parts[1]), parts[2]);
    }
  }

  /** One program, killed, and what was found of its work. */
  private record Outcome(
      List<Said> said, long killed, boolean isKept, boolean cutOff, List<String> found) {
    /** How many of the things said the latest of what was found contains. */
    int reached() {
      return found.stream()
          .mapToInt(t -> said.stream().map(Said::title).toList().lastIndexOf(t))
          // What was done and not yet said when it was killed is later than all that was said.
          .map(n -> n < 0 ? said.size() - 1 : n)
          .max()
          .orElse(-1);
    }

    /** Whether it had run long enough to lose more than it may. */
    boolean isOld() {
      return said.get(0).at() < killed - MOST_LOST_MS;
    }

    /** Age of the oldest thing that is lost, when the program was killed. */
    long lost() {
      int next = reached() + 1;
      return next >= said.size() ? 0 : killed - said.get(next).at();
    }
  }

  /**
   * How much longer the machine takes at times over one writing than at its best. Where others make
   * it so busy, or its disk so slow, a second of theirs is not the program's.
   */
  private static final class Lateness extends Thread {
    private final Path file;
    private final Case written;
    private final List<long[]> took = Collections.synchronizedList(new ArrayList<>());

    Lateness(Path file, Case written) {
      this.file = file;
      this.written = written;
      setDaemon(true);
    }

    @Override
    public void run() {
      try {
        while (true) {
          long from = System.currentTimeMillis();
          AtomicFile.write(file, CaseCodec.toBytes(written));
          long to = System.currentTimeMillis();
          took.add(new long[] {to, to - from});
          Thread.sleep(100);
        }
      } catch (InterruptedException | CaseFileException end) {
        // What has been measured stands.
      }
    }

    /** In ms, at worst within two seconds before a moment or just after it. */
    long before(long moment) {
      synchronized (took) {
        long best = took.stream().mapToLong(t -> t[1]).min().orElse(0);
        return took.stream()
            .filter(t -> t[0] > moment - 2000 && t[0] - t[1] < moment)
            .mapToLong(t -> t[1] - best)
            .max()
            .orElse(0);
      }
    }
  }

  @TempDir Path folder;

  @Test
  void no_more_than_the_last_second_is_lost() throws Exception {
    List<String> command = command();
    Lateness machine = new Lateness(folder.resolve("measured.json"), CaseStore.load(CASE));
    machine.start();
    ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
    List<Outcome> outcomes = new ArrayList<>();
    try {
      List<Future<Outcome>> runs = new ArrayList<>();
      for (int i = 0; i < KILLS; i++) {
        int n = i;
        runs.add(pool.submit(() -> killed(command, n)));
      }
      for (Future<Outcome> run : runs) {
        outcomes.add(run.get(120, TimeUnit.SECONDS));
      }
    } finally {
      pool.shutdownNow();
      machine.interrupt();
      machine.join();
    }
    long edits = outcomes.stream().mapToLong(o -> o.said().size()).sum();
    long saves = outcomes.stream().flatMap(o -> o.said().stream()).filter(Said::saved).count();
    long kept = outcomes.stream().filter(Outcome::isKept).count();
    long[] lost = outcomes.stream().mapToLong(Outcome::lost).toArray();
    // Of an edit that is lost, one writing may have been under way and the next one due.
    long[] late = outcomes.stream().mapToLong(o -> 2 * machine.before(o.killed())).toArray();
    System.out.printf(
        "%d kills, %d edits, %d savings, %d cut off in a saving, %d recovered from a copy; lost: %d"
            + " ms in the middle, at most %d ms; the machine late by %d ms in the middle, at most"
            + " %d ms%n",
        outcomes.size(),
        edits - saves,
        saves,
        outcomes.stream().filter(Outcome::cutOff).count(),
        kept,
        middle(lost),
        Arrays.stream(lost).max().orElse(0),
        middle(late),
        Arrays.stream(late).max().orElse(0));
    // The test would say nothing if the programs did nothing.
    assertThat(kept).isGreaterThan(KILLS / 5);
    assertThat(saves).isGreaterThan(KILLS / 4);
    assertThat(outcomes.stream().filter(Outcome::isOld).count()).isGreaterThan(KILLS / 10);
    for (int i = 0; i < KILLS; i++) {
      assertThat(lost[i])
          .as("age in ms of the oldest edit that program %d lost", i)
          .isLessThanOrEqualTo(MOST_LOST_MS + late[i]);
    }
  }

  private static long middle(long[] values) {
    return Arrays.stream(values).sorted().skip(values.length / 2).findFirst().orElse(0);
  }

  private Outcome killed(List<String> command, int n) throws Exception {
    Path state = folder.resolve("state" + n);
    Path desk = Files.createDirectory(folder.resolve("desk" + n));
    Path user = desk.resolve("case.json");
    Files.copy(CASE, user);
    List<String> line = new ArrayList<>(command);
    Collections.addAll(
        line,
        state.toString(),
        user.toString(),
        String.valueOf(n),
        n % DESKS == 0 ? EditingToBeKilled.DESK : EditingToBeKilled.KEEPING,
        "0");
    Path errors = folder.resolve("errors" + n);
    Path says = folder.resolve("says" + n);
    Process p =
        new ProcessBuilder(line)
            .redirectError(errors.toFile())
            .redirectOutput(says.toFile())
            .start();
    Random chance = new Random(n);
    long least = 20L * (1 + chance.nextInt(8));
    while (p.isAlive() && Files.size(says) < least) {
      Thread.sleep(5);
    }
    Thread.sleep(chance.nextInt(chance.nextBoolean() ? 300 : 1600));
    long when = System.currentTimeMillis();
    boolean alive = p.isAlive();
    p.destroyForcibly().waitFor();
    assertThat(Files.readString(errors)).as("errors of program " + n).isEmpty();
    assertThat(alive).as("program " + n + " goes on until it is killed").isTrue();
    List<Said> said;
    try (Stream<String> lines = Files.lines(says)) {
      said = lines.filter(KilledAtAnyMomentTest::isWhole).map(Said::of).toList();
    }
    return found(said, when, state, desk, user);
  }

  /** What a program that is killed says last may break off. */
  private static boolean isWhole(String line) {
    return line.matches("(edited|saved) \\d{13} \\S.*");
  }

  private static Outcome found(List<Said> said, long when, Path state, Path desk, Path user)
      throws Exception {
    List<String> titles = new ArrayList<>();
    titles.add(CaseStore.load(user).title());
    Optional<Path> previous = PreviousVersion.find(user);
    if (previous.isPresent()) {
      CaseStore.load(previous.get());
    }
    List<FoundWork> works = new Safekeeping(state, Runnable::run).look();
    assertThat(works).hasSizeLessThanOrEqualTo(1);
    for (FoundWork w : works) {
      assertThat(w.trouble()).isEmpty();
      titles.add(w.copy().orElseThrow().subject().title());
    }
    boolean cutOff;
    try (Stream<Path> left = Files.list(desk)) {
      cutOff = left.anyMatch(p -> p.toString().endsWith(".tmp"));
    }
    return new Outcome(said, when, !works.isEmpty(), cutOff, titles);
  }

  /**
   * The way to start the program. Its classes are archived once, in the form in which the virtual
   * machine keeps them, so that it starts in a third of the time.
   */
  private List<String> command() throws Exception {
    Path jar = folder.resolve("program.jar");
    List<String> path = new ArrayList<>(List.of(jar.toString()));
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      out.setLevel(0);
      for (String entry :
          System.getProperty("java.class.path").split(System.getProperty("path.separator"))) {
        if (Files.isDirectory(Path.of(entry))) {
          pack(Path.of(entry), out);
        } else {
          path.add(entry);
        }
      }
    }
    List<String> java = new ArrayList<>();
    java.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    java.addAll(FLAGS);
    List<String> program =
        List.of(
            "-cp",
            String.join(System.getProperty("path.separator"), path),
            EditingToBeKilled.class.getName());
    Path archive = folder.resolve("program.jsa");
    Path user = Files.copy(CASE, folder.resolve("archived.json"));
    List<String> once = new ArrayList<>(java);
    once.add("-XX:ArchiveClassesAtExit=" + archive);
    once.addAll(program);
    Collections.addAll(
        once,
        folder.resolve("archived").toString(),
        user.toString(),
        "1",
        EditingToBeKilled.DESK,
        "60");
    new ProcessBuilder(once)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("archiving").toFile())
        .start()
        .waitFor();
    if (Files.exists(archive)) {
      java.add("-XX:SharedArchiveFile=" + archive);
    }
    java.addAll(program);
    return java;
  }

  private static void pack(Path root, JarOutputStream out) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path p : all.filter(Files::isRegularFile).sorted().toList()) {
        try {
          out.putNextEntry(new JarEntry(root.relativize(p).toString().replace('\\', '/')));
          Files.copy(p, out);
          out.closeEntry();
        } catch (java.util.zip.ZipException twice) {
          // The first of that name is the one that is found.
        }
      }
    }
  }
}
