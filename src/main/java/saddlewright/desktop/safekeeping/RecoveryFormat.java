package saddlewright.desktop.safekeeping;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.desktop.Words;

/**
 * A recovery copy as text: a line that says what it is, lines {@code key=value} about the work, an
 * empty line, and the case as its file would hold it. It says nothing of who the patient is but
 * whether that is kept beside it.
 */
final class RecoveryFormat {
  private static final String FIRST = "Saddlewright recovery copy 1";
  private static final String KEPT = "kept beside this file";
  private static final String AS_SAVED = "as saved";

  private RecoveryFormat() {}

  static byte[] toBytes(RecoveryCopy c) {
    StringBuilder out = new StringBuilder(FIRST).append('\n');
    line(out, "file", c.file().map(Path::toString).orElse(""));
    line(out, "base", c.base().orElse(""));
    line(out, "at", c.at().toString());
    line(out, "edit", c.edit());
    line(out, "patient", c.isPatientKept() ? KEPT : AS_SAVED);
    return out.append('\n')
        .append(CaseCodec.toJson(c.subject()))
        .toString()
        .getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, String key, String value) {
    out.append(key).append('=');
    out.append(value.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r"));
    out.append('\n');
  }

  private static String plain(String value) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '\\' && i + 1 < value.length()) {
        char next = value.charAt(++i);
        out.append(next == 'n' ? '\n' : next == 'r' ? '\r' : next);
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  /**
   * The copy that the text holds; who the patient is is not yet in it.
   *
   * @param name name of the file, for the sentences
   * @throws CaseFileException when it is none, or its case cannot be read
   */
  static RecoveryCopy fromBytes(byte[] bytes, String name) throws CaseFileException {
    String text = new String(bytes, StandardCharsets.UTF_8);
    int end = text.indexOf("\n\n");
    if (end < 0 || !text.startsWith(FIRST + "\n")) {
      throw new CaseFileException(Kind.NOT_A_CASE, Words.of("safe.not-a-copy", name));
    }
    Map<String, String> values = new LinkedHashMap<>();
    text.substring(FIRST.length() + 1, end)
        .lines()
        .filter(l -> l.contains("="))
        .forEach(l -> values.put(l.substring(0, l.indexOf('=')), plain(after(l))));
    try {
      return new RecoveryCopy(
          CaseCodec.fromJson(text.substring(end + 2), name),
          Optional.of(values.getOrDefault("file", "")).filter(f -> !f.isEmpty()).map(Path::of),
          Optional.of(values.getOrDefault("base", "")).filter(b -> !b.isEmpty()),
          Instant.parse(values.getOrDefault("at", "")),
          values.getOrDefault("edit", ""),
          Optional.empty(),
          values.getOrDefault("patient", "").equals(KEPT));
    } catch (DateTimeException | InvalidPathException e) {
      throw new CaseFileException(Kind.NOT_A_CASE, Words.of("safe.not-a-copy", name), e);
    }
  }

  private static String after(String line) {
    return line.substring(line.indexOf('=') + 1);
  }
}
