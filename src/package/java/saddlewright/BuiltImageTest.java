package saddlewright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The built image runs by itself, and the installer holds what makes a double click open a case.
 */
class BuiltImageTest {
  private static final Path FOLDER = Path.of(System.getProperty("package.folder"));
  private static final Path DEMO = Path.of("demo-cases", "01-lower-class-1-rpi.json");

  /** What a program said, and its exit code. */
  private record Answer(int code, String said) {}

  private static Path launcher() {
    return Stream.of(
            "saddlewright/bin/saddlewright",
            "saddlewright/saddlewright.exe",
            "saddlewright.app/Contents/MacOS/saddlewright")
        .map(FOLDER::resolve)
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no launcher in " + FOLDER));
  }

  private static Answer run(Path log, String... words) throws Exception {
    ProcessBuilder b = new ProcessBuilder(words).redirectErrorStream(true);
    // The image must not lean on a Java that happens to be installed.
    b.environment().remove("JAVA_HOME");
    b.redirectOutput(log.toFile());
    Process p = b.start();
    if (!p.waitFor(60, TimeUnit.SECONDS)) {
      p.destroyForcibly();
      throw new AssertionError(List.of(words) + " does not end: " + Files.readString(log));
    }
    return new Answer(p.exitValue(), Files.readString(log));
  }

  private static Answer image(Path folder, String... arguments) throws Exception {
    List<String> words = new ArrayList<>(List.of(launcher().toString()));
    words.addAll(List.of(arguments));
    return run(folder.resolve("log"), words.toArray(String[]::new));
  }

  @Test
  void it_prescribes_a_demo_case_and_reads_its_own_prescription(@TempDir Path folder)
      throws Exception {
    Path pdf = folder.resolve("order.pdf");
    Answer written = image(folder, "prescribe", DEMO.toString(), "--out", pdf.toString());
    assertThat(written.said()).doesNotContain("Exception");
    assertThat(written.code()).isZero();
    assertThat(Files.size(pdf)).isGreaterThan(50_000);
    assertThat(
            new String(Files.readAllBytes(pdf), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
    Answer read = image(folder, "check", pdf.toString());
    assertThat(read.said()).contains("Lower: Kennedy Class I");
    assertThat(read.code()).isZero();
  }

  @Test
  void it_brings_its_own_runtime() throws IOException {
    try (Stream<Path> files = Files.walk(launcher().getParent().getParent())) {
      assertThat(files.map(p -> p.getFileName().toString()))
          .anyMatch(n -> n.equals("libjvm.so") || n.equals("jvm.dll") || n.equals("libjvm.dylib"));
    }
  }

  @Test
  void it_opens_its_window_on_a_case(@TempDir Path folder) throws Exception {
    String display = System.getenv().getOrDefault("DISPLAY", "");
    assumeTrue(!display.isBlank(), "no display to open a window on");
    Path log = folder.resolve("log");
    ProcessBuilder b =
        new ProcessBuilder(launcher().toString(), DEMO.toString()).redirectErrorStream(true);
    b.environment().put("XDG_CONFIG_HOME", folder.toString());
    b.environment().put("XDG_STATE_HOME", folder.toString());
    b.redirectOutput(log.toFile());
    Process p = b.start();
    try {
      assertThat(p.waitFor(8, TimeUnit.SECONDS))
          .as("it ended by itself: " + Files.readString(log))
          .isFalse();
      assertThat(Files.readString(log)).doesNotContain("Exception");
    } finally {
      p.destroy();
      p.waitFor(10, TimeUnit.SECONDS);
    }
  }

  @Test
  void the_debian_package_claims_case_files_and_brings_its_icons(@TempDir Path folder)
      throws Exception {
    Path deb;
    try (Stream<Path> files = Files.list(FOLDER)) {
      deb = files.filter(f -> f.toString().endsWith(".deb")).findFirst().orElse(FOLDER);
    }
    assumeTrue(!deb.equals(FOLDER), "another system's installer was built");
    Path out = folder.resolve("out");
    Answer unpacked = run(folder.resolve("log"), "dpkg-deb", "-R", deb.toString(), out.toString());
    assertThat(unpacked.code()).as(unpacked.said()).isZero();
    Path lib = out.resolve("opt/saddlewright/lib");
    assertThat(lib.resolve("saddlewright.png")).exists();
    try (Stream<Path> files = Files.list(lib)) {
      List<Path> all = files.toList();
      Path desktop =
          all.stream().filter(f -> f.toString().endsWith(".desktop")).findFirst().orElseThrow();
      assertThat(Files.readString(desktop))
          .contains("MimeType=application/vnd.saddlewright.case+json")
          .contains("Exec=/opt/saddlewright/bin/saddlewright %f");
      Path mime =
          all.stream().filter(f -> f.toString().endsWith("MimeInfo.xml")).findFirst().orElseThrow();
      assertThat(Files.readString(mime)).contains("*.saddle");
    }
    assertThat(Files.readString(out.resolve("DEBIAN/control"))).contains("Package: saddlewright");
  }
}
