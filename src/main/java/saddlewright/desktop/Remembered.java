package saddlewright.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * What the window remembers from one start to the next, in plain files of the user's configuration
 * folder.
 */
final class Remembered {
  private static final int MOST = 10;

  private final Path folder;
  private final ObservableList<Path> recent = FXCollections.observableArrayList();

  Remembered(Path folder) {
    this.folder = folder;
    try {
      for (String line : Files.readAllLines(folder.resolve("recent.txt"))) {
        if (!line.isBlank()) {
          recent.add(Path.of(line));
        }
      }
    } catch (IOException | InvalidPathException e) {
      // Nothing remembered yet, or not readable: an empty list is a fair start.
      recent.clear();
    }
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

  ObservableList<Path> recent() {
    return recent;
  }

  void note(Path file) {
    Path full = file.toAbsolutePath().normalize();
    recent.remove(full);
    recent.add(0, full);
    while (recent.size() > MOST) {
      recent.remove(recent.size() - 1);
    }
    List<String> lines = new ArrayList<>();
    recent.forEach(p -> lines.add(p.toString()));
    write("recent.txt", String.join("\n", lines) + "\n");
  }

  void forgetAll() {
    recent.clear();
    write("recent.txt", "");
  }

  /** Width, height and whether maximised, of the window when it was closed last. */
  Properties window() {
    return properties("window.properties");
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

  void noteWindow(double width, double height, boolean maximised) {
    write(
        "window.properties",
        "width="
            + Math.round(width)
            + "\nheight="
            + Math.round(height)
            + "\nmaximised="
            + maximised
            + "\n");
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
