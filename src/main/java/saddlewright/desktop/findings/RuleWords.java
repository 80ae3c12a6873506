package saddlewright.desktop.findings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.rules.Rule;

/** Passages from the page of a rule. */
final class RuleWords {
  /** A heading of the page with what stands below it. */
  record Section(String title, List<String> paragraphs) {}

  private RuleWords() {}

  static Optional<String> why(Rule rule) {
    return section(rule, "Why");
  }

  static String whenToWaive(Rule rule) {
    return section(rule, "When to waive").orElse("");
  }

  private static Optional<String> section(Rule rule, String title) {
    return sections(rule).stream()
        .filter(s -> s.title().equals(title))
        .findFirst()
        .map(s -> String.join("\n", s.paragraphs()));
  }

  static List<Section> sections(Rule rule) {
    return parse(text(rule));
  }

  private static String text(Rule rule) {
    try (InputStream in =
        RuleWords.class.getResourceAsStream("/saddlewright/rules/pages/" + rule.id() + ".md")) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Section> parse(String page) {
    List<Section> out = new ArrayList<>();
    List<String> now = new ArrayList<>();
    String title = "";
    for (String block : page.split("\n\\s*\n|(?=\n## )|(?<=\n)(?=## )")) {
      String b = block.strip();
      if (b.startsWith("## ")) {
        int end = b.indexOf('\n') < 0 ? b.length() : b.indexOf('\n');
        now = new ArrayList<>();
        title = b.substring(3, end).strip();
        out.add(new Section(title, now));
        b = b.substring(end).strip();
      }
      if (!b.isEmpty() && !title.isEmpty()) {
        now.add(b.replace("\n", " ").replaceAll("\\*\\*|`", ""));
      }
    }
    return out;
  }
}
