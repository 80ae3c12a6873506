package saddlewright;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import saddlewright.command.SaddlewrightCommand;
import saddlewright.desktop.Desktop;

/**
 * Start of the program: the window for no argument or for files, the command line for all else.
 *
 * <p>It is no JavaFX {@code Application}: the Java launcher refuses to start one from the class
 * path.
 */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    System.exit(run(args));
  }

  /**
   * Runs the program and returns its exit code.
   *
   * @param args as given on the command line
   */
  static int run(String... args) {
    List<Path> files = Arrays.stream(args).flatMap(a -> fileToOpen(a).stream()).toList();
    return files.size() == args.length ? Desktop.open(files) : SaddlewrightCommand.run(args);
  }

  /**
   * The file that an argument asks to open in the window: it exists, can be a case file or a sheet
   * that carries one, and is no word of the command line.
   */
  static Optional<Path> fileToOpen(String argument) {
    if (!Desktop.mayOpen(argument) || SaddlewrightCommand.knows(argument)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(argument)).filter(Files::isRegularFile);
    } catch (InvalidPathException notAPath) {
      return Optional.empty();
    }
  }
}
