package saddlewright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The file that a command writes, which is never one that it reads. */
final class OutFile {
  private OutFile() {}

  /**
   * Refuses to write over the case, whatever names or links lead to it.
   *
   * @throws ParameterException when both are one file
   */
  static void refuseCase(Path out, Path file, CommandLine line) throws IOException {
    refuse(out, file, "the case", line);
  }

  /**
   * Refuses to write over a file that is read, whatever names or links lead to it.
   *
   * @param what what it is, in a sentence
   * @throws ParameterException when both are one file
   */
  static void refuse(Path out, Path file, String what, CommandLine line) throws IOException {
    if (Files.exists(out) && Files.exists(file) && Files.isSameFile(out, file)) {
      throw new ParameterException(
          line, "--out " + out + " is " + what + " itself and would be lost; name another file");
    }
  }
}
