package saddlewright.desktop.preferences;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Shows a folder in the platform's own window of files. */
final class FolderWindow {
  private FolderWindow() {}

  /** The command that shows it. */
  static List<String> command(String os, Path folder) {
    String name = os.toLowerCase(Locale.ROOT);
    String program = name.contains("mac") ? "open" : name.contains("win") ? "explorer" : "xdg-open";
    return List.of(program, folder.toString());
  }

  /**
   * Shows a folder.
   *
   * @throws IOException where the platform has no such window
   */
  static void open(Path folder) throws IOException {
    new ProcessBuilder(command(System.getProperty("os.name"), folder))
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
