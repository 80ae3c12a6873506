package saddlewright.desktop.preferences;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * The text of a file of settings, in the format of Java properties. It is changed line by line, so
 * that what a user has written there, comments and keys that nobody knows, stays as it is.
 */
final class SettingsText {
  /**
   * What belongs together: a comment, an empty line, or a key with its value over one or more
   * lines.
   *
   * @param number of its first line, from 1
   * @param key empty where it sets nothing
   */
  private record Part(int number, List<String> lines, Optional<String> key, String value) {}

  /** A line that is no setting. */
  record Broken(int line, String text) {}

  private final List<Part> parts;
  private final List<Broken> broken;

  private SettingsText(List<Part> parts, List<Broken> broken) {
    this.parts = parts;
    this.broken = broken;
  }

  static SettingsText of(String text) {
    List<Part> parts = new ArrayList<>();
    List<Broken> broken = new ArrayList<>();
    List<String> lines = text.isEmpty() ? List.of() : List.of(text.split("\\R", -1));
    int end = !lines.isEmpty() && lines.get(lines.size() - 1).isEmpty() ? 1 : 0;
    for (int i = 0; i < lines.size() - end; ) {
      int from = i;
      boolean comment = isComment(lines.get(i));
      do {
        i++;
      } while (!comment && continues(lines.get(i - 1)) && i < lines.size() - end);
      List<String> own = List.copyOf(lines.subList(from, i));
      parts.add(comment ? new Part(from + 1, own, Optional.empty(), "") : read(from, own, broken));
    }
    return new SettingsText(parts, broken);
  }

  private static Part read(int from, List<String> lines, List<Broken> broken) {
    Properties one = new Properties();
    try {
      one.load(new StringReader(String.join("\n", lines)));
    } catch (IOException | IllegalArgumentException e) {
      // An escape that is none: this line is passed over, the others hold.
      one.clear();
      broken.add(new Broken(from + 1, lines.get(0).strip()));
    }
    Optional<String> key = one.stringPropertyNames().stream().findFirst();
    return new Part(from + 1, lines, key, key.map(one::getProperty).orElse("").strip());
  }

  private static boolean isComment(String line) {
    String s = line.strip();
    return s.isEmpty() || s.startsWith("#") || s.startsWith("!");
  }

  private static boolean continues(String line) {
    int slashes = 0;
    while (slashes < line.length() && line.charAt(line.length() - 1 - slashes) == '\\') {
      slashes++;
    }
    return slashes % 2 == 1;
  }

  /** Lines that could not be read. */
  List<Broken> broken() {
    return List.copyOf(broken);
  }

  /** What a key is set to, by its last line; empty where it is not set. */
  Optional<String> value(String key) {
    return last(key).map(Part::value);
  }

  /** Number of the line that sets a key; 0 where there is none. */
  int line(String key) {
    return last(key).map(Part::number).orElse(0);
  }

  private Optional<Part> last(String key) {
    return parts.stream().filter(p -> p.key().equals(Optional.of(key))).reduce((a, b) -> b);
  }

  /** What is set, by key. */
  Map<String, String> values() {
    Map<String, String> out = new LinkedHashMap<>();
    parts.forEach(p -> p.key().ifPresent(k -> out.put(k, p.value())));
    return out;
  }

  /**
   * The text with a key set in the place where it stood, or at the end.
   *
   * @param comment lines that go before it where it is new
   */
  SettingsText with(String key, String value, List<String> comment) {
    String line = key + " = " + escaped(value);
    List<Part> next = new ArrayList<>();
    boolean placed = false;
    Optional<Part> last = last(key);
    for (Part p : parts) {
      if (!p.key().equals(Optional.of(key))) {
        next.add(p);
      } else if (p == last.orElse(null)) {
        next.add(new Part(0, List.of(line), Optional.of(key), value));
        placed = true;
      }
    }
    if (!placed) {
      if (!comment.isEmpty()) {
        List<String> before = new ArrayList<>(List.of(""));
        comment.forEach(c -> before.add("# " + c));
        next.add(new Part(0, before, Optional.empty(), ""));
      }
      next.add(new Part(0, List.of(line), Optional.of(key), value));
    }
    return of(text(next));
  }

  /** The text without the lines of a key. */
  SettingsText without(String key) {
    return of(text(parts.stream().filter(p -> !p.key().equals(Optional.of(key))).toList()));
  }

  /** As the format has it: one line, with nothing that would end, continue or trim it. */
  private static String escaped(String value) {
    String s = value.replace("\\", "\\\\").replace("\r", "").replace("\n", "\\n");
    return s.startsWith(" ") ? "\\" + s : s;
  }

  private static String text(List<Part> parts) {
    StringBuilder out = new StringBuilder();
    parts.forEach(p -> p.lines().forEach(l -> out.append(l).append('\n')));
    return out.toString();
  }

  @Override
  public String toString() {
    return text(parts);
  }
}
