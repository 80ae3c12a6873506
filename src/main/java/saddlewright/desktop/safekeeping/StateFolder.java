package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** The folder where this platform keeps what a program needs from one start to the next. */
public final class StateFolder {
  private StateFolder() {}

  /**
   * The folder; it need not exist yet.
   *
   * @param os name of the operating system, as Java gives it
   */
  public static Path of(String os, Map<String, String> environment, Path home) {
    String name = os.toLowerCase(Locale.ROOT);
    if (name.contains("win") && !name.contains("darwin")) {
      return in(environment.get("LOCALAPPDATA"), home.resolve("AppData/Local"))
          .resolve("Saddlewright");
    }
    if (name.contains("mac") || name.contains("darwin")) {
      return home.resolve("Library/Application Support/Saddlewright");
    }
    return in(environment.get("XDG_STATE_HOME"), home.resolve(".local/state"))
        .resolve("saddlewright");
  }

  private static Path in(String named, Path otherwise) {
    return named == null || named.isBlank() ? otherwise : Path.of(named);
  }
}
