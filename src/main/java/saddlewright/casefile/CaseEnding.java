package saddlewright.casefile;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The endings of files that hold a case. The content is the same; the first is the program's own,
 * so that a double click opens the editor, where every program claims the second.
 */
public final class CaseEnding {
  /** The ending of new case files. */
  public static final String OWN = ".saddle";

  public static final String JSON = ".json";

  /** All, the usual one first. */
  public static final List<String> ALL = List.of(OWN, JSON);

  private CaseEnding() {}

  /** Whether a file is, by its name, a case file. */
  public static boolean isOn(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return ALL.stream().anyMatch(small::endsWith);
  }

  /** The file if its name has one of the endings; otherwise with the usual one added. */
  public static Path on(Path file) {
    return isOn(file.toString()) ? file : file.resolveSibling(file.getFileName() + OWN);
  }
}
