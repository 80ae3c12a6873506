package saddlewright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The file that a command writes, which is never the case that it reads. */
final class OutFile {
  private OutFile() {}

  /**
   * Refuses to write over the case, whatever names or links lead to it.
   *
   * @throws ParameterException when both are one file
   */
  static void refuseCase(Path out, Path file, CommandLine line) throws IOException {
    if (Files.exists(out) && Files.exists(file) && Files.isSameFile(out, file)) {
      throw new ParameterException(
          line, "--out " + out + " is the case itself and would be lost; name another file");
    }
  }
}
