package saddlewright.desktop.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.desktop.Step;
import saddlewright.desktop.StepOfRule;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RulePage;

/**
 * What is to be said of a step: what is decided at it, and how.
 *
 * @param sections its headings with what stands below them
 * @param rules the rules that judge what is decided
 */
public record StepHelp(Step step, List<RulePage.Section> sections, List<Rule> rules) {
  private static final String FOLDER = "/saddlewright/help/";

  public StepHelp {
    sections = List.copyOf(sections);
    rules = List.copyOf(rules);
  }

  public static StepHelp of(Step step) {
    String name = step.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".md";
    try (InputStream in = StepHelp.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("the help of " + name + " is not packed");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new StepHelp(
          step,
          RulePage.parse(text).sections(),
          RuleBook.rules().stream().filter(r -> StepOfRule.of(Optional.of(r)) == step).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean matches(List<String> words) {
    String all = (step.name() + " " + sections).toLowerCase(Locale.ROOT);
    return words.stream().allMatch(all::contains);
  }
}
