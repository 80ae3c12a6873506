package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class SaddlewrightCommandTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final CommandLine line =
      SaddlewrightCommand.line().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));

  @Test
  void prints_its_version() {
    assertThat(line.execute("--version")).isZero();
    assertThat(out.toString().strip()).matches("saddlewright \\d+\\.\\d+\\.\\d+.*");
  }

  @Test
  void prints_help() {
    assertThat(line.execute("--help")).isZero();
    assertThat(out.toString()).startsWith("Usage: saddlewright");
  }

  @Test
  void refuses_an_unknown_word() {
    assertThat(line.execute("--no-such-option")).isEqualTo(2);
    assertThat(err.toString()).contains("--no-such-option");
  }
}
