package saddlewright.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page of a rule in words: why it holds, what is measured, what to do, when to waive.
 *
 * @param text the page as it was written, in Markdown
 * @param sections its headings with what stands below them, in order
 */
public record RulePage(String text, List<Section> sections) {
  private static final String FOLDER = "/saddlewright/rules-pages/";

  /** A heading with the paragraphs below it, without marks of emphasis. */
  public record Section(String title, List<String> paragraphs) {
    public Section {
      paragraphs = List.copyOf(paragraphs);
    }
  }

  public RulePage {
    sections = List.copyOf(sections);
  }

  /** The page of a rule; without words where the program was packed without pages. */
  public static RulePage of(Rule rule) {
    String resource = FOLDER + rule.id() + ".md";
    try (InputStream in = RulePage.class.getResourceAsStream(resource)) {
      return parse(in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("the page of rule " + rule.id() + " cannot be read", e);
    }
  }

  /** A page from its Markdown. */
  public static RulePage parse(String text) {
    List<Section> out = new ArrayList<>();
    // What stands before the first heading is the claim itself, which the rule knows.
    String[] parts = text.replace("\r", "").split("(?m)^## ");
    for (int i = 1; i < parts.length; i++) {
      String[] blocks = parts[i].strip().split("\n", 2);
      List<String> paragraphs = new ArrayList<>();
      for (String p : (blocks.length < 2 ? "" : blocks[1]).split("\n\\s*\n")) {
        String plain = p.strip().replaceAll("\n(?!- )", " ").replaceAll("\\*+|`", "");
        if (!plain.isEmpty()) {
          paragraphs.add(plain);
        }
      }
      out.add(new Section(blocks[0].strip(), paragraphs));
    }
    return new RulePage(text, out);
  }

  /** What stands under a heading. */
  public Optional<String> section(String title) {
    return sections.stream()
        .filter(s -> s.title().equals(title))
        .findFirst()
        .map(s -> String.join("\n", s.paragraphs()));
  }

  public Optional<String> why() {
    return section("Why");
  }

  public Optional<String> whenToWaive() {
    return section("When to waive");
  }
}
