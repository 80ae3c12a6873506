package saddlewright.command;

import java.util.Locale;
import saddlewright.rules.Profile;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RuleGroup;
import saddlewright.rules.RulePage;
import saddlewright.rules.Weighting;

/** The rule book as text for people. */
final class RuleText {
  private static final int LINE = 88;

  private RuleText() {}

  /** Every rule by chapter, with its weight in the school. */
  static String book(Profile school) {
    StringBuilder out = new StringBuilder();
    out.append(RuleBook.rules().size())
        .append(" rules, weighed by ")
        .append(school.label())
        .append(".\n");
    for (RuleGroup group : RuleGroup.values()) {
      out.append('\n').append(group.title()).append('\n');
      for (Rule r : group.rules()) {
        String weight = weight(r, school).toUpperCase(Locale.ROOT);
        out.append(String.format(Locale.ROOT, "  %-10s  %s%n", weight, r.id()).replace("\r", ""));
        out.append(wrapped(r.claim(), "              "));
      }
    }
    return out.toString();
  }

  /** One rule: claim, weight, source, and what its page says. */
  static String page(Rule r, Profile school) {
    StringBuilder out = new StringBuilder();
    out.append(r.id()).append("\n\n").append(wrapped(r.claim(), "")).append('\n');
    out.append(RuleGroup.of(r).title()).append(". ").append(weightInWords(r, school));
    out.append("\nSource: ").append(r.source().words()).append('\n');
    for (RulePage.Section s : RulePage.of(r).sections()) {
      out.append('\n').append(s.title()).append('\n');
      s.paragraphs().forEach(p -> out.append(wrapped(p, "  ")));
    }
    return out.toString();
  }

  /** Such as "must" or "not taught". */
  static String weight(Rule r, Profile school) {
    return school.teaches(r) ? school.severity(r.stated()).code() : "not taught";
  }

  private static String weightInWords(Rule r, Profile school) {
    String here = weight(r, school);
    StringBuilder words = new StringBuilder();
    words.append(school.title()).append(": ").append(here);
    if (!here.equals(r.severity().code())) {
      words.append(", usually ").append(r.severity().code());
    }
    words.append(r.isHardStop() ? ". No waiver can answer it." : ".");
    Weighting w = school.weights().get(r.id());
    if (w != null) {
      words.append("\nWeighed so by ").append(w.source().words());
      words.append(w.reason().isEmpty() ? "" : ": " + w.reason()).append('.');
    }
    return words.toString();
  }

  /** The text in lines that a terminal holds, each behind the margin. */
  private static String wrapped(String text, String margin) {
    StringBuilder out = new StringBuilder();
    for (String paragraph : text.split("\n")) {
      StringBuilder line = new StringBuilder();
      for (String word : paragraph.strip().split("\\s+")) {
        if (!line.isEmpty() && margin.length() + line.length() + 1 + word.length() > LINE) {
          out.append(margin).append(line).append('\n');
          line.setLength(0);
        }
        line.append(line.isEmpty() ? "" : " ").append(word);
      }
      out.append(margin).append(line).append('\n');
    }
    return out.toString();
  }
}
