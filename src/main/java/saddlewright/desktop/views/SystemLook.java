package saddlewright.desktop.views;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Whether the computer's own windows are dark, asked of its settings by the command that each
 * platform has for it; light where there is no answer.
 */
public final class SystemLook {
  private static final long PATIENCE_SECONDS = 2;

  private SystemLook() {}

  /** Asks away from the thread that paints the window; the answer comes from that other thread. */
  public static void ask(String os, Map<String, String> environment, Consumer<Boolean> answer) {
    Thread asking =
        new Thread(
            () -> answer.accept(isDark(os, environment, SystemLook::said)), "look of the system");
    asking.setDaemon(true);
    asking.start();
  }

  /**
   * Whether the windows are dark.
   *
   * @param run gives what a command says; empty where it cannot be run
   */
  static boolean isDark(
      String os, Map<String, String> environment, Function<List<String>, Optional<String>> run) {
    String name = os.toLowerCase(Locale.ROOT);
    if (name.contains("mac")) {
      return says(run, "dark", "defaults", "read", "-g", "AppleInterfaceStyle");
    }
    if (name.contains("win")) {
      return says(
          run,
          "0x0",
          "reg",
          "query",
          "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
          "/v",
          "AppsUseLightTheme");
    }
    return environment.getOrDefault("GTK_THEME", "").toLowerCase(Locale.ROOT).endsWith("dark")
        || says(run, "dark", "gsettings", "get", "org.gnome.desktop.interface", "color-scheme");
  }

  private static boolean says(
      Function<List<String>, Optional<String>> run, String word, String... command) {
    return run.apply(List.of(command))
        .filter(s -> s.toLowerCase(Locale.ROOT).strip().replace("'", "").endsWith(word))
        .isPresent();
  }

  private static Optional<String> said(List<String> command) {
    try {
      Process p =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectInput(ProcessBuilder.Redirect.PIPE)
              .start();
      p.getOutputStream().close();
      if (!p.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        p.destroyForcibly();
        return Optional.empty();
      }
      return p.exitValue() == 0
          ? Optional.of(new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }
}
