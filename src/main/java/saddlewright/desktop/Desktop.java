package saddlewright.desktop;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import saddlewright.casefile.CaseEnding;

/** The way into the window: opens it, or says in one line what is missing. */
public final class Desktop {

  /** Exit code where no window can be shown. */
  public static final int NO_WINDOW = 2;

  private static final String REMEDY =
      "On Debian or Ubuntu: apt-get install libgtk-3-0 libxtst6, and start it where a screen"
          + " is set (DISPLAY or WAYLAND_DISPLAY). The command line still works: see --help.";

  /** Held here, since the logging system holds loggers weakly and would forget the level. */
  private static final Logger TOOLKIT_LOG = Logger.getLogger("javafx");

  private Desktop() {}

  /**
   * Opens the window and returns when it is closed.
   *
   * @param files the case files or sheets to show, each in a window; none for the welcome page
   * @return exit code: 0, or {@link #NO_WINDOW} after one line on standard error
   */
  public static int open(List<Path> files) {
    if (!hasDisplay(System.getProperty("os.name"), System::getProperty, System.getenv())) {
      System.err.println(message("there is no display"));
      return NO_WINDOW;
    }
    // JavaFX warns of being on the class path, where we put it on purpose; and where its native
    // libraries do not load it prints stack traces of its own before it throws.
    PrintStream stderr = System.err;
    ByteArrayOutputStream noise = new ByteArrayOutputStream();
    Level level = TOOLKIT_LOG.getLevel();
    TOOLKIT_LOG.setLevel(Level.OFF);
    System.setErr(new PrintStream(noise, true, StandardCharsets.UTF_8));
    EditorApp.whenStarting(
        () -> {
          System.setErr(stderr);
          TOOLKIT_LOG.setLevel(level);
        });
    try {
      Application.launch(
          EditorApp.class, files.stream().map(Path::toString).toArray(String[]::new));
      return 0;
    } catch (RuntimeException | LinkageError e) {
      if (EditorApp.hasStarted()) {
        throw e;
      }
      boolean refused = trace(e).contains("Unable to open DISPLAY");
      stderr.println(
          message(
              refused ? "the display does not answer" : "the libraries that draw it did not load"));
      return NO_WINDOW;
    } finally {
      System.setErr(stderr);
      TOOLKIT_LOG.setLevel(level);
    }
  }

  /** Whether a file is, by its name, a case or a prescription that may hold one. */
  public static boolean mayOpen(String name) {
    return CaseEnding.isOn(name) || name.toLowerCase(Locale.ROOT).endsWith(".pdf");
  }

  /** Whether there is anything to show a window on; only Linux can tell before trying. */
  static boolean hasDisplay(
      String os, UnaryOperator<String> properties, Map<String, String> environment) {
    boolean drawnInMemory = "Monocle".equals(properties.apply("glass.platform"));
    boolean linux = os.toLowerCase(Locale.ROOT).contains("linux");
    return drawnInMemory
        || !linux
        || !environment.getOrDefault("DISPLAY", "").isBlank()
        || !environment.getOrDefault("WAYLAND_DISPLAY", "").isBlank();
  }

  private static String trace(Throwable e) {
    StringWriter text = new StringWriter();
    e.printStackTrace(new PrintWriter(text));
    return text.toString();
  }

  private static String message(String reason) {
    return "saddlewright: the window cannot open: " + reason + ". " + REMEDY;
  }
}
