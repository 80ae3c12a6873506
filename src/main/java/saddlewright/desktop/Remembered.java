package saddlewright.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * What the window remembers from one start to the next, in plain files of the user's configuration
 * folder.
 */
final class Remembered {
  private final Path folder;

  Remembered(Path folder) {
    this.folder = folder;
  }

  /** The folder where this platform keeps a user's settings. */
  static Path folder(String os, Map<String, String> environment, Path home) {
    String name = os.toLowerCase(Locale.ROOT);
    if (name.contains("win") && !name.contains("darwin")) {
      String data = environment.get("APPDATA");
      return (data == null ? home : Path.of(data)).resolve("Saddlewright");
    }
    if (name.contains("mac")) {
      return home.resolve("Library/Application Support/Saddlewright");
    }
    String config = environment.get("XDG_CONFIG_HOME");
    return (config == null || config.isBlank() ? home.resolve(".config") : Path.of(config))
        .resolve("saddlewright");
  }

  /** What is kept in a file; empty where there is none, or none that can be read. */
  Properties properties(String name) {
    Properties p = new Properties();
    try (var in = Files.newBufferedReader(folder.resolve(name))) {
      p.load(in);
    } catch (IOException | IllegalArgumentException e) {
      p.clear();
    }
    return p;
  }

  /** Keeps a text in a file of its own. */
  void write(String name, String text) {
    try {
      Files.createDirectories(folder);
      Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      // Convenience only: where it cannot be kept, the work goes on without it.
      System.err.println("saddlewright: " + folder + " cannot be written: " + e.getMessage());
    }
  }
}
